/** Charts as data, and what becomes of them: pictures, tables, charts in workbooks. */
package org.copperbook.sheets.chart;

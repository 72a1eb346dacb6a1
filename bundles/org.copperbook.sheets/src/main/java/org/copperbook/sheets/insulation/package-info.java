/** Insulation resistance over time as charts: on the page, as files and in the workbook the same. */
package org.copperbook.sheets.insulation;

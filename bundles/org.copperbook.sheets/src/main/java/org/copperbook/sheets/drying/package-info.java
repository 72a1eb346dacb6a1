/** The drying curve as a chart: on the page, as a file and in the workbook the same. */
package org.copperbook.sheets.drying;

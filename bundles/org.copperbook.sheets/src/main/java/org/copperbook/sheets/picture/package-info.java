/**
 * Pictures as plain data, told apart from what shows them: the window, a printer, SVG and PNG files and the workbooks
 * all draw the same marks.
 */
package org.copperbook.sheets.picture;

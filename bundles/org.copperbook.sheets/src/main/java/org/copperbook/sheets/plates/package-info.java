/** The two plates of the rotating rectifier as a picture: on the page, as a file and in the workbook the same. */
package org.copperbook.sheets.plates;

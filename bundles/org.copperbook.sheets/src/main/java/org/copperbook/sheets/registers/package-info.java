/** Tables of the workshop's registers: rows out as a workbook, and back in from workbooks and text files of any make. */
package org.copperbook.sheets.registers;

/** Reads winding cards from tables that others made: workbooks and text files with separators. */
package org.copperbook.sheets.cards;

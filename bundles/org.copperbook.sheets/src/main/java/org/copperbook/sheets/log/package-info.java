/**
 * Files of data loggers: read in one pass over the bytes however long they are, with every fault named by its row.
 *
 * <p>Rows and cells are found by a reader of its own and not by the one for old winding cards: that one bounds a table
 * to what a person may have typed and makes objects of its cells, this one passes a million rows without keeping them.
 */
package org.copperbook.sheets.log;

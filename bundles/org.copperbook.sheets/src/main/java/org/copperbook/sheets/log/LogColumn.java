package org.copperbook.sheets.log;

import org.copperbook.jobs.runup.LogQuantity;

/**
 * What one column of a log is taken for.
 *
 * @param index    place in the row, from 0
 * @param title    title in the file
 * @param quantity what it carries; null when the column is left aside
 * @param unit     unit of its numbers
 */
public record LogColumn(int index, String title, LogQuantity quantity, String unit) {
}

package org.copperbook.calc.catalogue;

import org.copperbook.calc.quantity.Dimension;

/**
 * A result of a calculation.
 *
 * @param name its name
 * @param dimension what it measures, or null for a word
 * @param unit the unit in which it is shown
 * @param doc what it is
 */
public record Output(String name, Dimension dimension, String unit, String doc) {
}

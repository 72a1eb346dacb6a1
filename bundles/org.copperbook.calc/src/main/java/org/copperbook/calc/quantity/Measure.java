package org.copperbook.calc.quantity;

/**
 * A quantity of a dimension that has no type of its own.
 *
 * @param dimension the dimension
 * @param si the number in {@link Dimension#unit()}
 */
public record Measure(Dimension dimension, double si) implements Quantity {
}

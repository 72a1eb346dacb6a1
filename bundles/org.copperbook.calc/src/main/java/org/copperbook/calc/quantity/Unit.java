package org.copperbook.calc.quantity;

/**
 * A unit of a dimension: SI value = number x factor + offset.
 *
 * @param symbol how the unit is written
 * @param dimension what it measures
 * @param factor SI units in one of this unit
 * @param offset SI value of its zero; not 0 for Fahrenheit only
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset) {

    /** The number in the SI unit of the dimension. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number in this unit from the SI number. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}

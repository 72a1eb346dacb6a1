package org.copperbook.calc.quantity;

/** A length of time, second. */
public record Duration(double seconds) implements Quantity {

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.DURATION;
    }
}

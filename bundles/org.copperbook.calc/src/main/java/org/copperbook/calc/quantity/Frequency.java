package org.copperbook.calc.quantity;

/** Frequency, hertz. */
public record Frequency(double hertz) implements Quantity {

    @Override
    public double si() {
        return hertz;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREQUENCY;
    }
}

package org.copperbook.calc.quantity;

/** Electrical resistance, ohm. */
public record Resistance(double ohms) implements Quantity {

    @Override
    public double si() {
        return ohms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RESISTANCE;
    }
}

package org.copperbook.calc.quantity;

/** Mass, kilogram. */
public record Mass(double kilograms) implements Quantity {

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }
}

package org.copperbook.calc.quantity;

/** Current, ampere. */
public record Current(double amperes) implements Quantity {

    @Override
    public double si() {
        return amperes;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CURRENT;
    }
}

package org.copperbook.calc.quantity;

/** Length, metre. */
public record Length(double metres) implements Quantity {

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }
}

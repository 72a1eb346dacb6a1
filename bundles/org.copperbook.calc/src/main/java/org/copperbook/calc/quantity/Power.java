package org.copperbook.calc.quantity;

/** Active power, watt. */
public record Power(double watts) implements Quantity {

    @Override
    public double si() {
        return watts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }
}

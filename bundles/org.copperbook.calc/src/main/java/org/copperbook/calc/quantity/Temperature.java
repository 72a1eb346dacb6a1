package org.copperbook.calc.quantity;

/** A temperature, degree Celsius. */
public record Temperature(double celsius) implements Quantity {

    @Override
    public double si() {
        return celsius;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }
}

package org.copperbook.calc.quantity;

/** Voltage, volt. */
public record Voltage(double volts) implements Quantity {

    @Override
    public double si() {
        return volts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLTAGE;
    }
}

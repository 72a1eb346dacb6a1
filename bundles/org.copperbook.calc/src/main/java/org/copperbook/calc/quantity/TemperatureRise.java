package org.copperbook.calc.quantity;

/** A difference of temperatures, kelvin. */
public record TemperatureRise(double kelvins) implements Quantity {

    @Override
    public double si() {
        return kelvins;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE_RISE;
    }
}

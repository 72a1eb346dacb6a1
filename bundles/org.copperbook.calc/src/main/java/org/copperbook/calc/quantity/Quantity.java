package org.copperbook.calc.quantity;

/**
 * A quantity: a number in the coherent SI unit of its dimension. Temperatures are in degrees Celsius, an SI unit, because
 * every formula of the trade uses them.
 */
public sealed interface Quantity
        permits Resistance, Temperature, TemperatureRise, Voltage, Current, Length, Area, Mass, Power,
                Frequency, RotationalSpeed, FluxDensity, Duration, Measure {

    /** The number in {@link Dimension#unit()}. */
    double si();

    Dimension dimension();

    /** The quantity of a dimension from its number in {@link Dimension#unit()}. */
    static Quantity of(Dimension dimension, double si) {
        return switch (dimension) {
            case RESISTANCE -> new Resistance(si);
            case TEMPERATURE -> new Temperature(si);
            case TEMPERATURE_RISE -> new TemperatureRise(si);
            case VOLTAGE -> new Voltage(si);
            case CURRENT -> new Current(si);
            case LENGTH -> new Length(si);
            case AREA -> new Area(si);
            case MASS -> new Mass(si);
            case POWER -> new Power(si);
            case FREQUENCY -> new Frequency(si);
            case ROTATIONAL_SPEED -> new RotationalSpeed(si);
            case FLUX_DENSITY -> new FluxDensity(si);
            case DURATION -> new Duration(si);
            default -> new Measure(dimension, si);
        };
    }
}

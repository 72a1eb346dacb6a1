package org.copperbook.desk.entry;

import org.copperbook.calc.quantity.Dimension;

/**
 * In which unit a number of a record is kept, typed and shown.
 *
 * @param dimension what is measured
 * @param kept      unit in which the record holds the number
 * @param implied   unit of a bare number when typed
 * @param shown     unit shown, or null to let the size of the value choose the prefix ("0.42 mΩ")
 */
public record FieldUnit(Dimension dimension, String kept, String implied, String shown) {

    public static final FieldUnit OHM = scaled(Dimension.RESISTANCE, "Ω");
    public static final FieldUnit VOLT = scaled(Dimension.VOLTAGE, "V");
    public static final FieldUnit AMPERE = scaled(Dimension.CURRENT, "A");
    public static final FieldUnit WATT = scaled(Dimension.POWER, "W");
    public static final FieldUnit VOLT_AMPERE = scaled(Dimension.APPARENT_POWER, "VA");
    public static final FieldUnit VAR = scaled(Dimension.REACTIVE_POWER, "var");
    public static final FieldUnit HERTZ = fixed(Dimension.FREQUENCY, "Hz");
    public static final FieldUnit RPM = fixed(Dimension.ROTATIONAL_SPEED, "r/min");
    public static final FieldUnit CELSIUS = fixed(Dimension.TEMPERATURE, "°C");
    public static final FieldUnit KELVIN = fixed(Dimension.TEMPERATURE_RISE, "K");
    public static final FieldUnit METRE = fixed(Dimension.LENGTH, "m");
    /** Kept in metres, typed and shown in millimetres. */
    public static final FieldUnit METRE_AS_MM = new FieldUnit(Dimension.LENGTH, "m", "mm", "mm");
    /** Kept, typed and shown in millimetres. */
    public static final FieldUnit MILLIMETRE = fixed(Dimension.LENGTH, "mm");
    public static final FieldUnit KILOGRAM = fixed(Dimension.MASS, "kg");
    public static final FieldUnit NEWTON_METRE = fixed(Dimension.TORQUE, "N·m");
    public static final FieldUnit MM_PER_SECOND = fixed(Dimension.VELOCITY, "mm/s");
    public static final FieldUnit SECOND = fixed(Dimension.DURATION, "s");
    public static final FieldUnit MINUTE = fixed(Dimension.DURATION, "min");
    public static final FieldUnit HOUR = fixed(Dimension.DURATION, "h");
    public static final FieldUnit TESLA = fixed(Dimension.FLUX_DENSITY, "T");
    public static final FieldUnit WATT_PER_KG = fixed(Dimension.SPECIFIC_LOSS, "W/kg");
    /** A plain number: power factor, slots of skew. */
    public static final FieldUnit NUMBER = new FieldUnit(Dimension.RATIO, "", "", "");
    /** Kept as a number of percent: humidity 45 means 45 %. */
    public static final FieldUnit PERCENT = fixed(Dimension.RATIO, "%");
    /** Kept as a fraction, typed and shown in percent. */
    public static final FieldUnit FRACTION_AS_PERCENT = new FieldUnit(Dimension.RATIO, "", "%", "%");

    /** Kept in the SI unit, shown with the prefix that suits the value. */
    public static FieldUnit scaled(Dimension dimension, String unit) {
        return new FieldUnit(dimension, unit, unit, null);
    }

    /** Kept, typed and shown in one unit. */
    public static FieldUnit fixed(Dimension dimension, String unit) {
        return new FieldUnit(dimension, unit, unit, unit);
    }

    /** The same quantity with another unit for bare numbers, e.g. volt-amperes typed as kVA. */
    public FieldUnit typedIn(String unit) {
        return new FieldUnit(dimension, kept, unit, shown);
    }
}

package org.copperbook.calc.quantity;

/** The kinds of quantity that the trade measures, each with the SI unit in which numbers are held. */
public enum Dimension {
    RESISTANCE("Ω", Scale.ENGINEERING),
    REACTANCE("Ω", Scale.ENGINEERING),
    TEMPERATURE("°C", Scale.PLAIN),
    TEMPERATURE_RISE("K", Scale.PLAIN),
    TEMPERATURE_COEFFICIENT("1/K", Scale.PLAIN),
    VOLTAGE("V", Scale.ENGINEERING),
    CURRENT("A", Scale.ENGINEERING),
    LENGTH("m", Scale.DOWN_ONLY),
    AREA("m²", Scale.PLAIN),
    VOLUME("m³", Scale.PLAIN),
    MASS("kg", Scale.PLAIN),
    POWER("W", Scale.ENGINEERING),
    APPARENT_POWER("VA", Scale.ENGINEERING),
    REACTIVE_POWER("var", Scale.ENGINEERING),
    ENERGY("J", Scale.ENGINEERING),
    FREQUENCY("Hz", Scale.ENGINEERING),
    ROTATIONAL_SPEED("1/s", Scale.PLAIN),
    MAGNETIC_FLUX("Wb", Scale.ENGINEERING),
    FLUX_DENSITY("T", Scale.ENGINEERING),
    FIELD_STRENGTH("A/m", Scale.PLAIN),
    MAGNETOMOTIVE_FORCE("A", Scale.ENGINEERING),
    CURRENT_DENSITY("A/m²", Scale.PLAIN),
    DURATION("s", Scale.DOWN_ONLY),
    VELOCITY("m/s", Scale.PLAIN),
    ACCELERATION("m/s²", Scale.PLAIN),
    TORQUE("N·m", Scale.PLAIN),
    RESIDUAL_UNBALANCE("kg·m", Scale.PLAIN),
    RESISTIVITY("Ω·m", Scale.PLAIN),
    CONDUCTIVITY("S/m", Scale.PLAIN),
    MASS_RESISTIVITY("Ω·kg/m²", Scale.PLAIN),
    RESISTANCE_PER_LENGTH("Ω/m", Scale.PLAIN),
    MASS_PER_LENGTH("kg/m", Scale.PLAIN),
    DENSITY("kg/m³", Scale.PLAIN),
    SPECIFIC_LOSS("W/kg", Scale.PLAIN),
    CAPACITANCE("F", Scale.ENGINEERING),
    INDUCTANCE("H", Scale.ENGINEERING),
    ANGLE("rad", Scale.PLAIN),
    FREQUENCY_PER_POWER("Hz/W", Scale.PLAIN),
    RATIO("", Scale.PLAIN),
    MONEY("", Scale.PLAIN);

    /** How numbers of a dimension are scaled when they are shown. */
    enum Scale {
        /** Engineering prefixes, thousandths to thousands and beyond. */
        ENGINEERING,
        /** Prefixes below one only: millimetres, but no kilometres. */
        DOWN_ONLY,
        /** No prefix. */
        PLAIN
    }

    private final String unit;
    private final Scale scale;

    Dimension(String unit, Scale scale) {
        this.unit = unit;
        this.scale = scale;
    }

    /** The symbol of the unit in which numbers are held; empty for a ratio. */
    public String unit() {
        return unit;
    }

    Scale scale() {
        return scale;
    }
}

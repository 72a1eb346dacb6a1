package org.copperbook.calc.insulation;

import java.util.OptionalDouble;

/**
 * Thermal classes with their temperature (IEC 60085) and the rise allowed by resistance over a 40 degree coolant for
 * indirectly air-cooled ac windings below 5 MW (IEC 60034-1, table 8, item 1c).
 */
public enum ThermalClass {
    Y(90, Double.NaN), A(105, 60), E(120, 75), B(130, 80), F(155, 105), H(180, 125), N(200, Double.NaN),
    R(220, Double.NaN);

    private final double celsius;
    private final double rise;

    ThermalClass(double celsius, double rise) {
        this.celsius = celsius;
        this.rise = rise;
    }

    /** The class temperature, degrees Celsius. */
    public double celsius() {
        return celsius;
    }

    /** The rise by resistance allowed over 40 degrees, kelvin; empty for classes without one in the table. */
    public OptionalDouble riseByResistance() {
        return Double.isNaN(rise) ? OptionalDouble.empty() : OptionalDouble.of(rise);
    }
}

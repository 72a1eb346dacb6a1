package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/** Resistance of a conductor from its size, and the constants of its metal at 20 degrees Celsius. */
public final class Resistivity {

    /** Conductivity of the International Annealed Copper Standard, S/m (IEC 60028). */
    public static final double IACS = 58e6;

    /** Resistivity of annealed copper at 20 degrees, ohm metre (IEC 60028; 1/58 as rounded there). */
    public static final double COPPER_RESISTIVITY = 1.7241e-8;

    /** Resistivity of aluminium conductor at 20 degrees, ohm metre (IEC 60287-1-1, table 1). */
    public static final double ALUMINIUM_RESISTIVITY = 2.8264e-8;

    private Resistivity() {
    }

    /** R = resistivity x length / area; SI units, all positive. */
    public static double ohms(double resistivity, double metres, double squareMetres) {
        return Require.positive("resistivity", resistivity, "Ω·m") * Require.positive("length", metres, "m")
                / Require.positive("area", squareMetres, "m²");
    }

    /** Area of a round conductor, m². */
    public static double roundArea(double diameter) {
        return Math.PI / 4 * Math.pow(Require.positive("diameter", diameter, "m"), 2);
    }

    /** How much thicker a round conductor of the second metal must be for the same resistance per metre. */
    public static double equalResistanceDiameterRatio(double resistivity1, double resistivity2) {
        return Math.sqrt(Require.positive("resistivity", resistivity2, "Ω·m")
                / Require.positive("resistivity", resistivity1, "Ω·m"));
    }

    /** Conductivity as a fraction of the copper standard. */
    public static double shareOfStandard(double conductivity) {
        return Require.positive("conductivity", conductivity, "S/m") / IACS;
    }
}

package org.copperbook.calc.resistance;

/**
 * Conductor materials, each with its inferred zero-resistance temperature: R is proportional to k + t, t in degrees
 * Celsius. Two constants are in use for copper and two for aluminium; all are offered, and a record keeps which one
 * it used.
 */
public enum Conductor {
    /** Copper, 235 (IEC 60034-1, 8.6.2.3). */
    COPPER_IEC(235),
    /** Copper, 234.5 (IEEE 112, IEEE 115, IEEE 118). */
    COPPER_IEEE(234.5),
    /** Aluminium, 225 (IEC 60034-1, 8.6.2.3). */
    ALUMINIUM(225),
    /** Aluminium, 228, the value that belongs to 0.00403 per kelvin at 20 degrees (IEC 60287). */
    ALUMINIUM_228(228);

    private final double inferredZero;

    Conductor(double inferredZero) {
        this.inferredZero = inferredZero;
    }

    /** k, in degrees Celsius below zero. */
    public double inferredZero() {
        return inferredZero;
    }
}

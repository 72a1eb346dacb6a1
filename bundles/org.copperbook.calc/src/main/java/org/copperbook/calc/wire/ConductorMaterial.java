package org.copperbook.calc.wire;

/**
 * A conductor material with the constants the winding arithmetic needs.
 *
 * <p>Copper: IEC 60028 (resistivity of annealed copper, 1/58 ohm mm2/m, density 8.89 g/cm3), inferred zero 235 C from
 * IEC 60034-1 cl. 8.6.2. Aluminium: IEC 60287 resistivity constant, inferred zero 225 C from IEC 60034-1, density 2.70
 * g/cm3 (handbook value for electrical-grade aluminium, memory).
 */
public enum ConductorMaterial {
    /** Annealed copper, inferred zero 235 C of IEC 60034-1. */
    COPPER(1.7241e-8, 8890.0, 235.0),
    /** Annealed copper with the inferred zero 234.5 C of IEEE 112, 115 and 118. */
    COPPER_IEEE(1.7241e-8, 8890.0, 234.5),
    /** Electrical-grade aluminium. */
    ALUMINIUM(2.8264e-8, 2700.0, 225.0);

    private final double resistivityAt20;
    private final double density;
    private final double inferredZero;

    ConductorMaterial(double resistivityAt20, double density, double inferredZero) {
        this.resistivityAt20 = resistivityAt20;
        this.density = density;
        this.inferredZero = inferredZero;
    }

    /** @return resistivity at 20 C in ohm metre */
    public double resistivityAt20() {
        return resistivityAt20;
    }

    /** @return density in kg/m3 */
    public double density() {
        return density;
    }

    /** @return temperature below zero at which the resistance would vanish, as a positive number of degrees C */
    public double inferredZero() {
        return inferredZero;
    }

    /**
     * Factor from the resistance at 20 C to that at another temperature, IEC 60034-1 cl. 8.6.2.
     *
     * @param celsius temperature in C, above minus the inferred zero
     * @return R(celsius)/R(20 C)
     */
    public double factorFrom20(double celsius) {
        return (inferredZero + celsius) / (inferredZero + 20.0);
    }
}

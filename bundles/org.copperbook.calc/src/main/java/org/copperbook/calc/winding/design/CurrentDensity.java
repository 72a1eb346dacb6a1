package org.copperbook.calc.winding.design;

import org.copperbook.calc.Require;
import org.copperbook.calc.winding.PhaseJunction;

/** Currents and current densities in a winding (definitions). */
public final class CurrentDensity {
    private CurrentDensity() {
    }

    /**
     * Line current of a three-phase rating, {@code S/(sqrt(3) U)}.
     *
     * @param voltAmperes apparent power in VA, above 0
     * @param lineVolts line voltage in V, above 0
     * @return A
     */
    public static double lineCurrent(double voltAmperes, double lineVolts) {
        return Require.positive("rating", voltAmperes,
                "VA") / (Math.sqrt(3) * Require.positive("line voltage", lineVolts, "V"));
    }

    /**
     * Current of one parallel circuit.
     *
     * @param lineCurrent line current in A, 0 or more
     * @param junction star or delta
     * @param circuits parallel circuits per phase, from 1
     * @return A
     */
    public static double circuitCurrent(double lineCurrent, PhaseJunction junction, int circuits) {
        Require.notNegative("line current", lineCurrent, "A");
        Require.between("parallel circuits", circuits, 1, 100, "a phase has at least one circuit");
        return lineCurrent / (junction == PhaseJunction.DELTA ? Math.sqrt(3) : 1) / circuits;
    }

    /**
     * Current density.
     *
     * @param lineCurrent line current in A
     * @param junction star or delta
     * @param circuits parallel circuits per phase
     * @param area conductor area of one circuit, all strands, in m2, above 0
     * @return A/m2
     */
    public static double of(double lineCurrent, PhaseJunction junction, int circuits, double area) {
        return circuitCurrent(lineCurrent, junction, circuits) / Require.positive("conductor area", area, "m2");
    }

    /**
     * Linear current loading, ampere-conductors along the bore.
     *
     * @param circuitCurrent current of one circuit in A
     * @param conductors conductors of all slots
     * @param bore bore in m
     * @return A/m
     */
    public static double linearLoading(double circuitCurrent, double conductors, double bore) {
        return Require.notNegative("current", circuitCurrent, "A") * Require.positive("conductors", conductors, "")
                / (Math.PI * Require.positive("bore", bore, "m"));
    }
}

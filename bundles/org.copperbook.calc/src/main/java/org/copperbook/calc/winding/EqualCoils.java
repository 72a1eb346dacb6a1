package org.copperbook.calc.winding;

import org.copperbook.calc.Require;

/**
 * Resistance and mass of a winding whose coils are all alike.
 *
 * @param coilsPerPhase coils of one phase, C, above 0
 * @param turnsPerCoil turns of one coil, T, above 0
 * @param meanTurn mean length of a turn in m, above 0 and up to 20
 * @param bundle strands in hand of one circuit
 * @param circuits parallel circuits of one phase, a, from 1
 */
public record EqualCoils(double coilsPerPhase, double turnsPerCoil, double meanTurn, ConductorBundle bundle,
        int circuits) {
    public EqualCoils {
        Require.positive("coils per phase", coilsPerPhase, "");
        Require.positive("turns per coil", turnsPerCoil, "");
        Require.between("mean length of turn", Require.positive("mean length of turn", meanTurn, "m"), 0, 20, "m",
                "no machine of this trade has a longer turn");
        Require.between("parallel circuits", circuits, 1, 100, "a phase has at least one circuit");
    }

    /**
     * Phase resistance {@code rho l T C/(a^2 s A)} (Ohm's law on the length in one circuit, a circuits in parallel).
     *
     * @param celsius winding temperature in C
     * @return ohm
     */
    public double phaseResistance(double celsius) {
        return meanTurn * turnsPerCoil * coilsPerPhase * bundle.ohmsPerMetre() * bundle.material().factorFrom20(celsius)
                / ((double) circuits * circuits);
    }

    /**
     * @param celsius winding temperature in C
     * @return resistance of one coil in ohm
     */
    public double coilResistance(double celsius) {
        return meanTurn * turnsPerCoil * bundle.ohmsPerMetre() * bundle.material().factorFrom20(celsius);
    }

    /**
     * @param phases phases of the winding
     * @return bare metal mass of the whole winding in kg, density times volume
     */
    public double mass(int phases) {
        return meanTurn * turnsPerCoil * coilsPerPhase * phases * bundle.kilogramsPerMetre();
    }

    /**
     * Mean length of turn that a measured phase resistance implies.
     *
     * @param ohms phase resistance in ohm, above 0
     * @param celsius winding temperature in C
     * @param coilsPerPhase coils of one phase
     * @param turnsPerCoil turns of one coil
     * @param bundle strands in hand of one circuit
     * @param circuits parallel circuits
     * @return m
     */
    public static double meanTurnFromResistance(double ohms, double celsius, double coilsPerPhase, double turnsPerCoil,
            ConductorBundle bundle, int circuits) {
        Require.positive("phase resistance", ohms, "ohm");
        return ohms / new EqualCoils(coilsPerPhase, turnsPerCoil, 1, bundle, circuits).phaseResistance(celsius);
    }

    /**
     * Mean length of turn that the mass of removed copper implies.
     *
     * @param kilograms bare mass in kg, above 0
     * @param turns turns of all coils
     * @param bundle strands in hand
     * @return m
     */
    public static double meanTurnFromMass(double kilograms, double turns, ConductorBundle bundle) {
        Require.positive("mass", kilograms, "kg");
        Require.positive("turns", turns, "");
        return kilograms / (turns * bundle.kilogramsPerMetre());
    }
}

package org.copperbook.calc.core;

import org.copperbook.calc.Require;

/**
 * The loop test planned: V = c f B A per turn, H times path for the ampere turns.
 * Source: IEEE 432-1992 and AR100 describe the test; transformer equation and Ampere's law.
 *
 * @param exactTurns turns that give the target exactly
 * @param turns whole turns nearest to it, at least one
 * @param fluxDensity peak density that the whole turns give, T
 * @param voltsPerTurn at the target density, V
 * @param ampereTurns rms ampere turns for the field strength given, A
 * @param amperes current in the loop cable, A
 * @param voltAmperes supply needed, VA
 * @param cableArea copper area of the loop cable at the density given, m²
 */
public record LoopPlan(double exactTurns, int turns, double fluxDensity, double voltsPerTurn, double ampereTurns,
        double amperes, double voltAmperes, double cableArea) {

    /** Usual back-iron density of the test: 1.0 to 1.5 T (1.32 T is 85 kilolines per square inch, EASA). */
    public static final double LEAST_USUAL_DENSITY = 1.0;
    public static final double GREATEST_USUAL_DENSITY = 1.5;

    /**
     * What the plan starts from.
     *
     * @param tesla target peak density in the back iron, 0.1 to 1.8 T
     * @param hertz supply frequency, 10 to 400 Hz
     * @param supplyVolts rms volts across the loop, V
     * @param fieldStrength rms field strength at the target, A/m, from the steel's curve or a trial turn
     * @param cableDensity current density allowed in the cable for a short test, A/m²
     */
    public record Target(double tesla, double hertz, double supplyVolts, double fieldStrength, double cableDensity) {
    }

    /** Plans a test; refuses densities above 1.8 T, frequencies outside 10 to 400 Hz and field strengths outside 10 to 20 000 A/m. */
    public static LoopPlan of(LoopCore core, Target target, EmfConstant constant) {
        Require.between("flux density", target.tesla(), 0.1, 1.8, "T", "above it the iron is saturated");
        Require.between("frequency", target.hertz(), 10, 400, "Hz", "the test is made near power frequency");
        Require.positive("supply voltage", target.supplyVolts(), "V");
        Require.between("field strength", target.fieldStrength(), 10, 20_000, "A/m",
                "electrical steels lie there at test density");
        Require.positive("current density of the cable", target.cableDensity(), "A/m²");
        double perTurn = constant.value() * target.hertz() * target.tesla() * core.area();
        double exact = target.supplyVolts() / perTurn;
        int turns = (int) Math.max(1, Math.rint(exact));
        double b = target.supplyVolts() / (constant.value() * target.hertz() * core.area() * turns);
        double ampereTurns = target.fieldStrength() * core.path();
        double amperes = ampereTurns / turns;
        return new LoopPlan(exact, turns, b, perTurn, ampereTurns, amperes, amperes * target.supplyVolts(),
                amperes / target.cableDensity());
    }

    /** Peak flux density from the volts of a search turn, T. */
    public static double density(double voltsPerTurn, double hertz, double area, EmfConstant constant) {
        Require.positive("volts per turn", voltsPerTurn, "V");
        Require.positive("frequency", hertz, "Hz");
        return voltsPerTurn / (constant.value() * hertz * Require.positive("area", area, "m²"));
    }

    /** Turns for a voltage, not rounded. */
    public static double turns(double volts, double hertz, double tesla, double area, EmfConstant constant) {
        Require.positive("voltage", volts, "V");
        Require.positive("frequency", hertz, "Hz");
        Require.positive("flux density", tesla, "T");
        return volts / (constant.value() * hertz * tesla * Require.positive("area", area, "m²"));
    }
}

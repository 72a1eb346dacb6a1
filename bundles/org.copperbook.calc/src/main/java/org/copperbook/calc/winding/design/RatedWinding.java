package org.copperbook.calc.winding.design;

import org.copperbook.calc.Require;
import org.copperbook.calc.winding.PhaseJunction;

/**
 * A winding with the figures a redesign needs.
 *
 * @param hertz frequency, above 0
 * @param lineVolts line voltage in V, above 0
 * @param junction star or delta
 * @param circuits parallel circuits per phase, from 1
 * @param coilsPerPhase coils per phase, above 0
 * @param turnsPerCoil turns per coil, above 0
 * @param windingFactor winding factor of the working wave, above 0 to 1
 * @param conductorArea copper area of one circuit, all strands, in m2, above 0
 * @param lineCurrent rated line current in A, above 0
 */
public record RatedWinding(double hertz, double lineVolts, PhaseJunction junction, int circuits, double coilsPerPhase,
        double turnsPerCoil, double windingFactor, double conductorArea, double lineCurrent) {
    public RatedWinding {
        Require.positive("frequency", hertz, "Hz");
        Require.positive("line voltage", lineVolts, "V");
        Require.between("parallel circuits", circuits, 1, 100, "a phase has at least one circuit");
        Require.positive("coils per phase", coilsPerPhase, "");
        Require.positive("turns per coil", turnsPerCoil, "");
        Require.between("winding factor", Require.positive("winding factor", windingFactor, ""), 0, 1, "",
                "no winding exceeds the full-pitch concentrated one");
        Require.positive("conductor area", conductorArea, "m2");
        Require.positive("line current", lineCurrent, "A");
    }

    /** @return phase voltage in V */
    public double phaseVolts() {
        return junction == PhaseJunction.STAR ? lineVolts / Math.sqrt(3) : lineVolts;
    }

    /** @return turns in series per phase */
    public double seriesTurns() {
        return coilsPerPhase * turnsPerCoil / circuits;
    }

    /** @return apparent power in VA */
    public double rating() {
        return Math.sqrt(3) * lineVolts * lineCurrent;
    }

    /** @return current density in A/m2 */
    public double currentDensity() {
        return CurrentDensity.of(lineCurrent, junction, circuits, conductorArea);
    }
}

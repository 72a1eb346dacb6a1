package org.copperbook.calc.winding.design;

import org.copperbook.calc.Require;
import org.copperbook.calc.winding.PhaseJunction;

/**
 * Volts, amperes and rating of an unchanged winding joined another way, each coil keeping its own voltage and current
 * (circuit identity; Bakshi, Ex. 4.18).
 *
 * @param lineVolts line voltage in V
 * @param lineCurrent line current in A
 * @param rating apparent power in VA
 */
public record Reconnection(double lineVolts, double lineCurrent, double rating) {

    /**
     * @param rating apparent power before in VA, above 0
     * @param lineVolts line voltage before in V, above 0
     * @param before star or delta before
     * @param circuitsBefore circuits before
     * @param after star or delta after
     * @param circuitsAfter circuits after
     * @return figures after
     */
    public static Reconnection of(double rating, double lineVolts, PhaseJunction before, int circuitsBefore,
            PhaseJunction after,
            int circuitsAfter) {
        double current = CurrentDensity.lineCurrent(rating, lineVolts);
        double root = Math.sqrt(3);
        Require.between("parallel circuits", circuitsBefore, 1, 100, "a phase has at least one circuit");
        Require.between("parallel circuits", circuitsAfter, 1, 100, "a phase has at least one circuit");
        double volts = lineVolts * circuitsBefore / circuitsAfter;
        double amperes = current * circuitsAfter / circuitsBefore;
        if (before == PhaseJunction.DELTA && after == PhaseJunction.STAR) {
            volts *= root;
            amperes /= root;
        } else if (before == PhaseJunction.STAR && after == PhaseJunction.DELTA) {
            volts /= root;
            amperes *= root;
        }
        return new Reconnection(volts, amperes, root * volts * amperes);
    }
}

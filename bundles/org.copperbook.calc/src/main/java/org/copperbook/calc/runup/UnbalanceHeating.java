package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * Extra heating of an induction motor on unbalanced volts: the rise grows by about twice the square of the unbalance in per
 * cent. Source: C. I. Hubert, Electric Machines, example 5.14; NEMA MG 1, 14.36.
 */
public final class UnbalanceHeating {

    private UnbalanceHeating() {
    }

    /** Rise with unbalance, K; unbalance as a fraction, up to 0.05. */
    public static double rise(double balancedRise, double unbalance) {
        Require.positive("rise on balanced volts", balancedRise, "K");
        Require.between("unbalance", unbalance, 0, 0.05, "", "above 5 % a motor is not to be run");
        double percent = 100 * unbalance;
        return balancedRise * (1 + 2 * percent * percent / 100);
    }
}

package org.copperbook.jobs.faults.machine;

/**
 * Mean direct voltage of a three-phase bridge by stepping through one cycle: the positive rail is the highest phase that
 * still has its upper diode, the negative rail the lowest that still has its lower one. A shorted diode ties its phase to
 * its rail; two phases tied together share the mean of their voltages because their source impedances are equal.
 */
final class Bridge {

    private static final int STEPS = 360;
    private final double[] amplitude = {1, 1, 1};
    private final boolean[] upper = {true, true, true};
    private final boolean[] lower = {true, true, true};
    private int shorted = -1;

    void amplitude(int phase, double value) {
        amplitude[phase] = value;
    }

    void openUpper(int phase) {
        upper[phase] = false;
    }

    void openPhase(int phase) {
        upper[phase] = false;
        lower[phase] = false;
    }

    void shortUpper(int phase) {
        shorted = phase;
    }

    /** Mean volts over those of the sound bridge. */
    double mean() {
        Bridge sound = new Bridge();
        return integrate() / sound.integrate();
    }

    private double integrate() {
        double sum = 0;
        for (int k = 0; k < STEPS; k++) {
            double[] v = new double[3];
            for (int p = 0; p < 3; p++) {
                v[p] = amplitude[p] * Math.cos(2 * Math.PI * (k / (double) STEPS - p / 3.0));
            }
            double plus = shorted >= 0 ? v[shorted] : -2;
            for (int p = 0; p < 3; p++) {
                if (upper[p] && p != shorted) {
                    plus = shorted >= 0 && v[p] > v[shorted] ? Math.max(plus, (v[p] + v[shorted]) / 2)
                            : Math.max(plus, v[p]);
                }
            }
            double minus = 2;
            for (int p = 0; p < 3; p++) {
                minus = lower[p] ? Math.min(minus, v[p]) : minus;
            }
            sum += Math.max(0, plus - minus);
        }
        return sum / STEPS;
    }
}

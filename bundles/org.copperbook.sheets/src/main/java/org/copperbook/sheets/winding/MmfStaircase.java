package org.copperbook.sheets.winding;

import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.Winding;

/**
 * The magnetomotive force along the bore at the instant when the current of the first phase is at its peak, its working
 * wave having the amplitude 1. Slot openings count as points; between them the force is level.
 */
final class MmfStaircase {

    private final double[] levels;
    private final double cosine;
    private final double sine;
    private final int polePairs;

    /** @throws IllegalArgumentException when the winding has no working wave */
    MmfStaircase(Winding winding) {
        polePairs = winding.polePairs();
        int slots = winding.slots();
        double[] steps = new double[slots];
        for (Coil c : winding.coils()) {
            double current = Math.cos((c.phase() - 1) * (winding.phases() % 2 == 0 ? 1 : 2) * Math.PI / winding.phases());
            steps[c.goSlot() - 1] += c.turns() * c.sense() * current;
            steps[c.returnSlot() - 1] -= c.turns() * c.sense() * current;
        }
        double a = 0;
        double b = 0;
        for (int s = 0; s < slots; s++) {
            double angle = 2 * Math.PI * polePairs * s / slots;
            // Fourier coefficients of a staircase from its steps, by parts.
            a -= steps[s] * Math.sin(angle) / (Math.PI * polePairs);
            b += steps[s] * Math.cos(angle) / (Math.PI * polePairs);
        }
        double working = Math.hypot(a, b);
        if (working < 1e-9) {
            throw new IllegalArgumentException("the winding makes no wave of " + polePairs + " pole pairs");
        }
        levels = levels(steps, working);
        cosine = a / working;
        sine = b / working;
    }

    private static double[] levels(double[] steps, double working) {
        double[] levels = new double[steps.length];
        double sum = 0;
        double mean = 0;
        for (int s = 0; s < steps.length; s++) {
            sum += steps[s];
            levels[s] = sum;
            mean += sum / steps.length;
        }
        for (int s = 0; s < steps.length; s++) {
            levels[s] = (levels[s] - mean) / working;
        }
        return levels;
    }

    /** The level between a slot and the next; index 0 is slot 1. */
    double level(int index) {
        return levels[index];
    }

    double peak() {
        double peak = 1;
        for (double l : levels) {
            peak = Math.max(peak, Math.abs(l));
        }
        return peak;
    }

    /** The working wave at a place. @param share of the way round the bore, 0 at slot 1 */
    double working(double share) {
        double angle = 2 * Math.PI * polePairs * share;
        return cosine * Math.cos(angle) + sine * Math.sin(angle);
    }
}

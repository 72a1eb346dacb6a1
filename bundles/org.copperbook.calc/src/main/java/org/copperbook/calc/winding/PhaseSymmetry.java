package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;

/**
 * How the phases of a winding lie to each other for the working field.
 *
 * @param volts relative electromotive force of each phase: factor times turns, in turns
 * @param degrees angle from phase 1 to each phase, 0 to below 360
 * @param largestMagnitudeDeviation largest deviation of a phase from the mean magnitude, over the mean
 * @param largestAngleDeviation largest deviation of the angle between neighbouring phases from 360/m in degrees;
 *     an even number of phases shares out half a circle, 180/m, as two phases at right angles do
 */
public record PhaseSymmetry(List<Double> volts, List<Double> degrees, double largestMagnitudeDeviation,
        double largestAngleDeviation) {
    public PhaseSymmetry {
        volts = List.copyOf(volts);
        degrees = List.copyOf(degrees);
    }

    /**
     * @param winding a winding whose phases all have coils
     * @return its symmetry
     */
    public static PhaseSymmetry of(Winding winding) {
        WindingFactors factors = new WindingFactors(winding);
        List<Double> volts = new ArrayList<>();
        List<Double> degrees = new ArrayList<>();
        double first = factors.phasor(1, 1).degrees();
        for (int p = 1; p <= winding.phases(); p++) {
            Phasor phasor = factors.phasor(p, 1);
            volts.add(phasor.magnitude() * winding.turnsOf(p));
            degrees.add(positive(phasor.degrees() - first));
        }
        double mean = volts.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double magnitude = volts.stream().mapToDouble(v -> Math.abs(v - mean)).max().orElseThrow() / mean;
        return new PhaseSymmetry(volts, degrees, magnitude, angleDeviation(degrees));
    }

    /** Either direction of rotation is a symmetrical system; the better one counts. */
    private static double angleDeviation(List<Double> degrees) {
        int m = degrees.size();
        if (m == 1) {
            return 0;
        }
        double step = m % 2 == 0 ? 180.0 / m : 360.0 / m;
        double forward = 0;
        double backward = 0;
        for (int p = 1; p < m; p++) {
            forward = Math.max(forward, Math.abs(signed(degrees.get(p) - p * step)));
            backward = Math.max(backward, Math.abs(signed(degrees.get(p) + p * step)));
        }
        return Math.min(forward, backward);
    }

    private static double positive(double degrees) {
        double turned = degrees % 360;
        double result = turned < 0 ? turned + 360 : turned;
        return result > 360 - 1e-9 ? 0 : result;
    }

    private static double signed(double degrees) {
        double turned = positive(degrees);
        return turned > 180 ? turned - 360 : turned;
    }

    /**
     * @param magnitude allowed deviation of a magnitude over the mean, for instance 1e-9
     * @param angle allowed deviation of an angle in degrees
     * @return whether the winding is symmetrical inside these bounds
     */
    public boolean within(double magnitude, double angle) {
        return largestMagnitudeDeviation <= magnitude && largestAngleDeviation <= angle;
    }

    /** @return whether the winding is symmetrical but for rounding */
    public boolean balanced() {
        return within(1e-9, 1e-6);
    }
}

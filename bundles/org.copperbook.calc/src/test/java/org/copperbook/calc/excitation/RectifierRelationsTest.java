package org.copperbook.calc.excitation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The relations against numerical integration of the rectified wave (Simpson's rule of Apache Commons Math). */
class RectifierRelationsTest {

    private static double mean(DoubleUnaryOperator f) {
        return new SimpsonIntegrator().integrate(1_000_000, f::applyAsDouble, 0, 2 * Math.PI) / (2 * Math.PI);
    }

    /** The highest (less the lowest, in a bridge) of three unit phase voltages. */
    private static double wave(RectifierRelations r, double angle) {
        double a = Math.cos(angle);
        double b = Math.cos(angle - 2 * Math.PI / 3);
        double c = Math.cos(angle + 2 * Math.PI / 3);
        double high = Math.max(a, Math.max(b, c));
        double low = Math.min(a, Math.min(b, c));
        return r == RectifierRelations.BRIDGE ? high - low : high;
    }

    @ParameterizedTest
    @EnumSource(RectifierRelations.class)
    void meanRmsAndRipple(RectifierRelations r) {
        double lineRms = Math.sqrt(1.5);
        double mean = mean(x -> wave(r, x));
        double rms = Math.sqrt(mean(x -> wave(r, x) * wave(r, x)));
        double peak = r == RectifierRelations.BRIDGE ? Math.sqrt(3) : 1;
        assertEquals(mean, r.meanVolts(lineRms), 1e-6);
        assertEquals(rms, r.rmsOverPeak() * peak, 1e-6);
        assertEquals(Math.sqrt(rms * rms / (mean * mean) - 1), r.rippleRmsOverMean(), 1e-5);
        double lowest = r == RectifierRelations.BRIDGE ? 1.5 : 0.5;
        assertEquals((peak - lowest) / mean, r.ripplePeakToPeakOverMean(), 1e-6);
    }

    /** The six-pulse ripple is 4.2 % rms and 14.0 % of the mean peak to peak; calling it 13.4 % confuses it with the peak. */
    @Test
    void sixPulseRippleIsNotThirteenPerCentOfTheMean() {
        assertEquals(0.042, RectifierRelations.BRIDGE.rippleRmsOverMean(), 5e-5);
        assertEquals(0.140, RectifierRelations.BRIDGE.ripplePeakToPeakOverMean(), 5e-4);
        assertEquals(0.134, RectifierRelations.BRIDGE.ripplePeakToPeakOverMean()
                * RectifierRelations.BRIDGE.meanOverPeak(), 5e-4);
    }

    @ParameterizedTest
    @EnumSource(RectifierRelations.class)
    void peakReverseIsThePeakOfTheLineVoltage(RectifierRelations r) {
        double worst = 0;
        for (int i = 0; i < 3600; i++) {
            double x = i * Math.PI / 1800;
            worst = Math.max(worst, Math.abs(Math.cos(x) - Math.cos(x - 2 * Math.PI / 3)));
        }
        assertEquals(worst, r.peakReverseVolts(Math.sqrt(1.5)), 1e-6);
    }

    @Test
    void meanTimesPiOverThreeIsThePeakReverseOfABridge() {
        assertEquals(RectifierRelations.BRIDGE.peakReverseVolts(400),
                RectifierRelations.BRIDGE.meanVolts(400) * Math.PI / 3, 1e-9);
    }

    @Test
    void requiredRatingCarriesItsMargins() {
        RequiredRating r = RequiredRating.of(RectifierRelations.BRIDGE, 100, 30,
                new RequiredRating.Margin(2.5, 2));
        assertEquals(100 * Math.PI / 3 * 2.5, r.repetitivePeakReverseVolts(), 1e-9);
        assertEquals(20, r.meanAmperes(), 1e-12);
    }
}

package org.copperbook.calc.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cooling curve against an exact exponential with noise, and the time limits of IEC 60034-1 (memory). */
class CoolingCurveTest {

    private static final double END = 0.26;
    private static final double ABOVE = 0.09;
    private static final double TAU = 380;

    @Test
    void exactExponentialIsFoundAgain() {
        double[] t = {40, 60, 80, 110, 150, 200};
        double[] r = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            r[i] = END + ABOVE * Math.exp(-t[i] / TAU);
        }
        CoolingCurve c = CoolingCurve.fit(t, r, END);
        assertEquals(TAU, c.timeConstant(), 1e-8);
        assertEquals(END + ABOVE, c.ohmsAt(0).value(), 1e-13);
        assertTrue(c.showsItsBend());
        assertFalse(CoolingCurve.fit(new double[] {5, 8, 11}, new double[] {0.349, 0.3484, 0.3479}, END)
                .showsItsBend());
    }

    /** A 95 % band of a straight line holds the truth 95 times in 100; 2000 noisy curves allow 94 to 96.2. */
    @Test
    void bandHoldsTheTruthAsOftenAsItSays() {
        Random random = new Random(61);
        int held = 0;
        int runs = 2000;
        for (int run = 0; run < runs; run++) {
            double[] t = {35, 50, 65, 80, 100, 120, 150, 180};
            double[] r = new double[t.length];
            for (int i = 0; i < t.length; i++) {
                double above = ABOVE * Math.exp(-t[i] / TAU);
                r[i] = END + above * Math.exp(0.004 * random.nextGaussian());
            }
            CoolingCurve.Point p = CoolingCurve.fit(t, r, END).at(0, 0.95);
            if (p.low() <= END + ABOVE && END + ABOVE <= p.high()) {
                held++;
            }
        }
        double share = (double) held / runs;
        assertTrue(share > 0.94 && share < 0.962, "share " + share);
    }

    @ParameterizedTest
    @CsvSource({"50e3, 30", "50001, 90", "200e3, 90", "200001, 120", "5e6, 120"})
    void timeLimitFollowsTheRating(double watts, double seconds) {
        assertEquals(seconds, CoolingDelay.forRating(watts).limitSeconds());
    }

    @Test
    void lateFirstReadingIsExtrapolatedAndVeryLateOneAgreed() {
        CoolingDelay d = CoolingDelay.forRating(40e3);
        assertEquals(CoolingDelay.Use.AS_READ, d.use(30));
        assertEquals(CoolingDelay.Use.EXTRAPOLATE_TO_LIMIT, d.use(60));
        assertEquals(CoolingDelay.Use.BY_AGREEMENT, d.use(61));
        assertThrows(OutOfRange.class, () -> CoolingDelay.forRating(6e6));
    }

    @Test
    void windingColderThanItsCoolantIsRefused() {
        OutOfRange refusal = assertThrows(OutOfRange.class,
                () -> CoolingCurve.fit(new double[] {1, 2, 3}, new double[] {0.3, 0.28, 0.25}, END));
        assertTrue(refusal.getMessage().contains("warmer than its coolant"));
    }
}

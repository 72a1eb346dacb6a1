package org.copperbook.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Distributions and the straight line against Apache Commons Math 3.6.1, and against the table of JCGM 100. */
class DistributionsTest {

    @ParameterizedTest
    @ValueSource(doubles = {-12, -6, -3.6, -2, -1, -0.1, 0, 1e-9, 0.5, 1, 1.959963984540054, 2.5, 3.53, 3.54, 5, 8})
    void normalAgreesWithCommonsMath(double z) {
        double expected = new NormalDistribution().cumulativeProbability(z);
        assertEquals(expected, Normal.cumulative(z), 1e-14);
    }

    @ParameterizedTest
    @CsvSource({"0.95,1", "0.95,2", "0.95,3", "0.99,16", "0.6827,4", "0.9545,7", "0.9973,30", "0.95,1000"})
    void studentCoverageAgreesWithCommonsMath(double level, double freedom) {
        double expected = new TDistribution(freedom).inverseCumulativeProbability((1 + level) / 2);
        assertEquals(expected, StudentT.coverage(level, freedom), 1e-9 * expected);
    }

    /** JCGM 100:2008, table G.2, two decimals as printed (memory). */
    @ParameterizedTest
    @CsvSource({"0.9545,1,13.97", "0.9545,10,2.28", "0.95,5,2.57", "0.99,20,2.85", "0.9973,50,3.16"})
    void studentCoverageAgreesWithTheGuide(double level, double freedom, double printed) {
        assertEquals(printed, StudentT.coverage(level, freedom), 0.006);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void straightLineAgreesWithCommonsMath(long seed) {
        Random random = new Random(seed);
        SimpleRegression reference = new SimpleRegression();
        int n = 3 + random.nextInt(20);
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = 10 * random.nextDouble() + i;
            y[i] = 3 - 0.2 * x[i] + random.nextGaussian();
            reference.addData(x[i], y[i]);
        }
        StraightLine line = StraightLine.through(x, y);
        assertEquals(reference.getIntercept(), line.intercept(), 1e-10);
        assertEquals(reference.getSlope(), line.slope(), 1e-11);
        assertEquals(reference.getSlopeStdErr(), line.slopeUncertainty(), 1e-11);
        assertEquals(reference.getInterceptStdErr(), line.at(0).u(), 1e-10);
        assertEquals(Math.sqrt(reference.getMeanSquareError()), line.scatter(), 1e-10);
    }

    @Test
    void lineThroughOneAbscissaIsRefused() {
        assertThrows(OutOfRange.class, () -> StraightLine.through(new double[] {1, 1}, new double[] {2, 3}));
    }

    /** JCGM 100:2008, 4.3.7: half-width over the square root of three. */
    @Test
    void meterStatementIsRectangular() {
        assertEquals((0.002 * 5 + 3 * 0.01) / Math.sqrt(3), new InstrumentAccuracy(0.2, 3, 0.01).standardUncertainty(5),
                1e-15);
        assertEquals(new InstrumentAccuracy(0.2, 3, 0.01).standardUncertainty(5),
                new InstrumentAccuracy(0.2, 3, 0.01).standardUncertainty(-5));
    }

    @Test
    void negativeUncertaintyIsRefused() {
        assertThrows(OutOfRange.class, () -> new Uncertain(1, -0.1));
        assertThrows(OutOfRange.class, () -> new Uncertain(Double.NaN, 0));
    }
}

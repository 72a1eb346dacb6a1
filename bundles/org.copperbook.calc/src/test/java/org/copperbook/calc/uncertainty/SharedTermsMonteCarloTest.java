package org.copperbook.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;

import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.copperbook.calc.resistance.AsLeftComparison;
import org.copperbook.calc.resistance.Conductor;
import org.copperbook.calc.resistance.LineReading;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.resistance.PhaseValues;
import org.copperbook.calc.resistance.TemperatureByResistance;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.resistance.Unbalance;
import org.junit.jupiter.api.Test;

/**
 * The propagated uncertainties against a Monte-Carlo run (JCGM 101:2008) in which gain, leads, thermometer and inferred zero
 * are drawn once for a set of readings and everything else for each reading. The model equations are written again here.
 */
class SharedTermsMonteCarloTest {

    private static final int DRAWS = 200_000;
    private static final double GAIN = 0.004;
    private static final double LEAD = 0.0006;
    private static final double KELVIN = 0.8;
    private static final double ZERO = 0.3;
    private static final double OWN_OHMS = 0.0004;
    private static final double OWN_KELVIN = 0.5;
    private static final SharedTerms SHARED = new SharedTerms(GAIN, LEAD, KELVIN, ZERO);

    /** One draw of everything that the set shares. */
    private static final class Draw {

        private final Random random;
        private final double gain;
        private final double lead;
        private final double thermometer;
        private final double k;

        private Draw(Random random) {
            this.random = random;
            gain = GAIN * random.nextGaussian();
            lead = LEAD * random.nextGaussian();
            thermometer = KELVIN * random.nextGaussian();
            k = 235 + ZERO * random.nextGaussian();
        }

        private double ohms(double value) {
            return value * (1 + gain) + lead + OWN_OHMS * random.nextGaussian();
        }

        private double celsius(double value) {
            return value + thermometer + OWN_KELVIN * random.nextGaussian();
        }
    }

    private static double spread(long seed, Function<Draw, Double> model) {
        Random random = new Random(seed);
        SummaryStatistics s = new SummaryStatistics();
        for (int i = 0; i < DRAWS; i++) {
            s.addValue(model.apply(new Draw(random)));
        }
        return s.getStandardDeviation();
    }

    private static Uncertain ohms(double value) {
        return new Uncertain(value, Math.sqrt(GAIN * GAIN * value * value + LEAD * LEAD + OWN_OHMS * OWN_OHMS));
    }

    private static Uncertain celsius(double value) {
        return new Uncertain(value, Math.hypot(KELVIN, OWN_KELVIN));
    }

    @Test
    void correctedResistance() {
        double expected = spread(11, d -> d.ohms(0.42) * (d.k + 20) / (d.k + d.celsius(63)));
        Uncertain x = TemperatureCorrection.correct(ohms(0.42), celsius(63), 20, Conductor.COPPER_IEC,
                new SharedSources(SHARED)).uncertain();
        assertEquals(expected, x.u(), 0.01 * expected);
    }

    @Test
    void deviationAsFoundToAsLeft() {
        double expected = spread(12, d -> d.ohms(0.43) / d.ohms(0.40) * (d.k + d.celsius(14)) / (d.k + d.celsius(31)));
        AsLeftComparison c = AsLeftComparison.of(new AsLeftComparison.Reading(ohms(0.40), celsius(14)),
                new AsLeftComparison.Reading(ohms(0.43), celsius(31)), 20, Conductor.COPPER_IEC, SHARED);
        assertEquals(expected, c.deviation().u(), 0.01 * expected);
        AsLeftComparison apart = AsLeftComparison.of(new AsLeftComparison.Reading(ohms(0.40), celsius(14)),
                new AsLeftComparison.Reading(ohms(0.43), celsius(31)), 20, Conductor.COPPER_IEC);
        assertTrue(apart.deviation().u() > 1.3 * expected, "taken as independent it would be far too wide");
    }

    @Test
    void unbalanceOfThree() {
        double expected = spread(13, d -> {
            double a = d.ohms(0.398);
            double b = d.ohms(0.400);
            double c = d.ohms(0.420);
            double mean = (a + b + c) / 3;
            return (c - mean) / mean;
        });
        Uncertain x = Unbalance.ofReadings(List.of(ohms(0.398), ohms(0.400), ohms(0.420)), SHARED);
        assertEquals(expected, x.u(), 0.01 * expected);
    }

    @Test
    void starPhase() {
        double expected = spread(14, d -> (d.ohms(0.80) + d.ohms(0.81) - d.ohms(0.79)) / 2);
        PhaseResult.Sound s = (PhaseResult.Sound) PhaseValues.star(LineReading.of(ohms(0.80)),
                LineReading.of(ohms(0.79)), LineReading.of(ohms(0.81)), SHARED);
        assertEquals(0.41, s.u().value(), 1e-12);
        assertEquals(expected, s.u().u(), 0.01 * expected);
    }

    @Test
    void deltaPhase() {
        double expected = spread(15, d -> {
            double uv = d.ohms(0.80);
            double vw = d.ohms(0.82);
            double wu = d.ohms(0.85);
            double s = vw + wu - uv;
            return 2 * vw * wu / s - s / 2;
        });
        PhaseResult.Sound s = (PhaseResult.Sound) PhaseValues.delta(LineReading.of(ohms(0.80)),
                LineReading.of(ohms(0.82)), LineReading.of(ohms(0.85)), SHARED);
        assertEquals(expected, s.u().u(), 0.01 * expected);
    }

    @Test
    void temperatureByResistance() {
        double expected = spread(16, d -> d.ohms(0.55) / d.ohms(0.42) * (d.k + d.celsius(20)) - d.k);
        Traced t = TemperatureByResistance.celsius(ohms(0.42), celsius(20), ohms(0.55), Conductor.COPPER_IEC,
                new SharedSources(SHARED));
        assertEquals(expected, t.u(), 0.01 * expected);
    }

    @Test
    void sharedGainAloneCancelsInUnbalance() {
        SharedTerms gain = new SharedTerms(0.05, 0, 0, 0);
        Uncertain x = Unbalance.ofReadings(List.of(new Uncertain(1, 0.05), new Uncertain(1.1, 0.055),
                new Uncertain(0.98, 0.049)), gain);
        assertEquals(0, x.u(), 1e-9);
    }

    @Test
    void sourcesAreIndependentUnlessTheyAreTheSameObject() {
        Source one = Source.named("meter");
        Source two = Source.named("meter");
        assertEquals(0, Traced.of(5, one, 0.1).minus(Traced.of(5, one, 0.1)).u());
        assertEquals(0.1 * Math.sqrt(2), Traced.of(5, one, 0.1).minus(Traced.of(5, two, 0.1)).u(), 1e-15);
        assertEquals(0.01, Traced.of(5, one, 0.1).covariance(Traced.of(7, one, 0.1)), 1e-15);
    }
}

package org.copperbook.calc.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Guard bands of JCGM 106:2012, 8.3; probabilities against Apache Commons Math. */
class GuardedDecisionTest {

    @ParameterizedTest
    @CsvSource({
        "5.0, 0.1, MEETS", "1.2, 0.1, MEETS", "1.19, 0.1, DOUBTFUL", "1.0, 0.1, DOUBTFUL", "0.81, 0.1, DOUBTFUL",
        "0.79, 0.1, FAILS", "0.79, 0.2, DOUBTFUL"
    })
    void lowerLimitOfOneMegohm(double value, double u, Outcome expected) {
        assertEquals(expected, GuardedDecision.decide(new Uncertain(value, u), Bounds.atLeast(1)).outcome());
    }

    @ParameterizedTest
    @CsvSource({"10, 0.1, MEETS", "9.1, 0.1, DOUBTFUL", "8.7, 0.1, FAILS", "11.3, 0.1, FAILS", "10, 1.0, DOUBTFUL"})
    void bandOfTenPerCent(double value, double u, Outcome expected) {
        assertEquals(expected, GuardedDecision.decide(new Uncertain(value, u), Bounds.between(9, 11)).outcome());
    }

    @Test
    void twoWireMeterCannotJudgeThreeTenthsOfAnOhm() {
        Uncertain reading = new Uncertain(0.3, 0.1 / Math.sqrt(3));
        assertEquals(Outcome.DOUBTFUL, GuardedDecision.decide(reading, Bounds.between(0.25, 0.35)).outcome());
    }

    @Test
    void nothingMeasuredAndNoLimitAreAnswers() {
        assertEquals(Outcome.NOT_MEASURED, GuardedDecision.decide(null, Bounds.atLeast(1)).outcome());
        assertEquals(Outcome.NO_LIMIT_SET, GuardedDecision.decide(new Uncertain(1, 0), Bounds.NONE).outcome());
        assertEquals(Outcome.NO_LIMIT_SET, GuardedDecision.decide(null, null).outcome());
        assertTrue(Double.isNaN(GuardedDecision.decide(null, null).probabilityOfConformity()));
    }

    @Test
    void exactValueOnTheLimitConforms() {
        Decision d = GuardedDecision.decide(new Uncertain(1, 0), Bounds.atLeast(1));
        assertEquals(Outcome.MEETS, d.outcome());
        assertEquals(1, d.probabilityOfConformity());
        assertEquals(Outcome.FAILS, GuardedDecision.decide(new Uncertain(0.999, 0), Bounds.atLeast(1)).outcome());
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void probabilityAgreesWithCommonsMathAndFollowsTheOutcome(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            Uncertain x = new Uncertain(10 * random.nextGaussian(), 0.01 + 3 * random.nextDouble());
            double lower = 10 * random.nextGaussian();
            Bounds b = Bounds.between(lower, lower + 8 * random.nextDouble());
            Decision d = GuardedDecision.decide(x, b);
            NormalDistribution n = new NormalDistribution(x.value(), x.u());
            double p = n.cumulativeProbability(b.upper()) - n.cumulativeProbability(b.lower());
            assertEquals(p, d.probabilityOfConformity(), 1e-12);
            if (d.outcome() == Outcome.MEETS) {
                assertTrue(p > 0.954, "inside with k = 2 is at least 95.4 % likely");
            } else if (d.outcome() == Outcome.FAILS) {
                assertTrue(p < 0.0228, "outside with k = 2 is less than 2.3 % likely");
            }
        }
    }

    @Test
    void crossedLimitsAreRefused() {
        assertThrows(OutOfRange.class, () -> Bounds.between(2, 1));
    }
}

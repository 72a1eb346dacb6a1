package org.copperbook.calc.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;

import org.copperbook.calc.resistance.PhaseResult.Finding;
import org.copperbook.calc.resistance.PhaseResult.Phase;
import org.copperbook.calc.resistance.PhaseResult.Reason;
import org.copperbook.calc.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Triples of terminal readings. Readings are made here from known phases by the series and parallel laws, written apart from
 * the formulas tested.
 */
class PhaseValuesTest {

    private static LineReading r(double ohms) {
        return LineReading.of(ohms, 0);
    }

    private static LineReading r(double ohms, double u) {
        return LineReading.of(ohms, u);
    }

    private static final LineReading OPEN = LineReading.aboveRange();

    private static double parallel(double a, double b) {
        if (Double.isInfinite(a)) {
            return b;
        }
        return Double.isInfinite(b) ? a : a == 0 || b == 0 ? 0 : 1 / (1 / a + 1 / b);
    }

    /** Delta phases a between U and V, b between V and W, c between W and U. */
    private static PhaseResult delta(double a, double b, double c, double u) {
        return PhaseValues.delta(r(parallel(a, b + c), u), r(parallel(b, c + a), u), r(parallel(c, a + b), u));
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53})
    void starInverts(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double[] p = {0.05 + random.nextDouble(), 0.05 + random.nextDouble(), 0.05 + random.nextDouble()};
            PhaseResult.Sound s = assertInstanceOf(PhaseResult.Sound.class,
                    PhaseValues.star(r(p[0] + p[1]), r(p[1] + p[2]), r(p[2] + p[0])));
            assertEquals(p[0], s.u().value(), 1e-12);
            assertEquals(p[1], s.v().value(), 1e-12);
            assertEquals(p[2], s.w().value(), 1e-12);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {54, 55, 56})
    void deltaInverts(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double a = 0.05 + random.nextDouble();
            double b = 0.05 + random.nextDouble();
            double c = 0.05 + random.nextDouble();
            PhaseResult.Sound s = assertInstanceOf(PhaseResult.Sound.class, delta(a, b, c, 0));
            assertEquals(a, s.u().value(), 1e-9);
            assertEquals(b, s.v().value(), 1e-9);
            assertEquals(c, s.w().value(), 1e-9);
        }
    }

    @Test
    void openPhaseOfADeltaReadsAsTheSumOfTheOthers() {
        double inf = Double.POSITIVE_INFINITY;
        assertEquals(Phase.U, assertInstanceOf(PhaseResult.OpenPhase.class, delta(inf, 0.4, 0.41, 0)).open());
        assertEquals(Phase.V, assertInstanceOf(PhaseResult.OpenPhase.class, delta(0.4, inf, 0.41, 0)).open());
        assertEquals(Phase.W, assertInstanceOf(PhaseResult.OpenPhase.class, delta(0.4, 0.41, inf, 0.001)).open());
    }

    @Test
    void shortedPhaseOfADelta() {
        assertEquals(Phase.V, assertInstanceOf(PhaseResult.ShortedPhase.class, delta(0.4, 0, 0.4, 0.001)).shorted());
        assertEquals(Phase.U, assertInstanceOf(PhaseResult.ShortedPhase.class, delta(0, 0.4, 0.4, 0)).shorted());
    }

    @Test
    void shortedPhaseOfAStar() {
        PhaseResult.ShortedPhase s = assertInstanceOf(PhaseResult.ShortedPhase.class,
                PhaseValues.star(r(0.40, 0.001), r(0.80, 0.001), r(0.401, 0.001)));
        assertEquals(Phase.U, s.shorted());
        assertTrue(s.alsoPossible().isEmpty());
    }

    @Test
    void openPhaseOfAStarLeavesOnePairConducting() {
        PhaseResult.OpenPhase o = assertInstanceOf(PhaseResult.OpenPhase.class,
                PhaseValues.star(OPEN, r(0.8), OPEN));
        assertEquals(Phase.U, o.open());
        assertEquals(Set.of(Finding.OPEN_LINE), o.alsoPossible());
    }

    @Test
    void openLineOfADelta() {
        assertEquals(Phase.W, assertInstanceOf(PhaseResult.OpenLine.class,
                PhaseValues.delta(r(0.4), OPEN, OPEN)).line());
    }

    @Test
    void nothingConducts() {
        assertEquals(null, assertInstanceOf(PhaseResult.OpenLine.class, PhaseValues.star(OPEN, OPEN, OPEN)).line());
    }

    @Test
    void oneOpenPairAcrossTwoClosedOnesMustBeRepeated() {
        PhaseResult.Inconsistent i = assertInstanceOf(PhaseResult.Inconsistent.class,
                PhaseValues.star(r(0.8), OPEN, r(0.8)));
        assertEquals(TerminalPair.VW, i.repeat());
        assertEquals(Reason.OPEN_ACROSS_A_CLOSED_PATH, i.reason());
    }

    @Test
    void readingAboveTheSumOfTheOthersMustBeRepeated() {
        PhaseResult.Inconsistent i = assertInstanceOf(PhaseResult.Inconsistent.class,
                PhaseValues.delta(r(0.40, 0.001), r(1.25, 0.001), r(0.41, 0.001)));
        assertEquals(TerminalPair.VW, i.repeat());
        assertEquals(Reason.ONE_EXCEEDS_THE_OTHERS, i.reason());
    }

    @Test
    void readingFarBelowTheOthersIsTheOneToRepeat() {
        PhaseResult.Inconsistent i = assertInstanceOf(PhaseResult.Inconsistent.class,
                PhaseValues.star(r(0.05, 0.001), r(0.80, 0.001), r(1.00, 0.001)));
        assertEquals(TerminalPair.UV, i.repeat());
    }

    @Test
    void meterTooCoarseForTheWindingIsSaidSo() {
        PhaseResult.Inconsistent i = assertInstanceOf(PhaseResult.Inconsistent.class,
                PhaseValues.star(r(0.1, 0.1), r(0.1, 0.1), r(0.2, 0.1)));
        assertEquals(Reason.NOT_RESOLVED, i.reason());
        assertTrue(i.alsoPossible().contains(Finding.SOUND));
    }

    @Test
    void doubtfulShortNamesSoundAsPossible() {
        PhaseResult p = PhaseValues.star(r(0.45, 0.12), r(0.80, 0.01), r(0.45, 0.12));
        assertEquals(Finding.SHORTED_PHASE, p.finding());
        assertEquals(Set.of(Finding.SOUND), p.alsoPossible());
    }

    @ParameterizedTest
    @ValueSource(longs = {57, 58})
    void noTripleIsEverRefused(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            LineReading[] l = new LineReading[3];
            for (int j = 0; j < 3; j++) {
                l[j] = random.nextInt(6) == 0 ? OPEN
                        : LineReading.of(new Uncertain(random.nextDouble() - 0.02, 0.05 * random.nextDouble()));
            }
            assertTrue(PhaseValues.star(l[0], l[1], l[2]).finding() != null);
            assertTrue(PhaseValues.delta(l[0], l[1], l[2]).finding() != null);
        }
    }

    @Test
    void relabellingTheTerminalsMovesTheFinding() {
        PhaseResult.OpenPhase a = (PhaseResult.OpenPhase) delta(Double.POSITIVE_INFINITY, 0.4, 0.5, 0.001);
        PhaseResult.OpenPhase b = (PhaseResult.OpenPhase) delta(0.5, Double.POSITIVE_INFINITY, 0.4, 0.001);
        assertEquals(Phase.U, a.open());
        assertEquals(Phase.V, b.open());
    }
}

package org.copperbook.calc.winding.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.wire.InsulationGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RedesignTest {
    private static final RatedWinding OLD = new RatedWinding(50, 400, PhaseJunction.STAR, 2, 16, 12, 0.925, 8e-6, 90);

    /** Bakshi Ex. 4.18: 600 kVA, 125 V delta, coils unchanged, in star: 216.506 V, 1600 A, 600 kVA. */
    @Test
    void reconnectionMatchesBakshi() {
        Reconnection star = Reconnection.of(600e3, 125, PhaseJunction.DELTA, 1, PhaseJunction.STAR, 1);
        assertEquals(216.506, star.lineVolts(), 5e-4);
        assertEquals(1600, star.lineCurrent(), 1e-6);
        assertEquals(600e3, star.rating(), 1e-6);
        Reconnection series = Reconnection.of(60e3, 208, PhaseJunction.STAR, 2, PhaseJunction.STAR, 1);
        assertEquals(416, series.lineVolts(), 1e-9);
        assertEquals(60e3, series.rating(), 1e-6);
    }

    /**
     * Transformer law of the induced voltage (any textbook): half the volts take half the turns and carry twice the
     * current.
     */
    @Test
    void halfTheVoltsTakeHalfTheTurns() {
        Redesign redesign = Redesign.of(OLD, new Redesign.Wish(50, 200, PhaseJunction.STAR, 2, 0.925));
        assertEquals(6, redesign.after().turnsPerCoil());
        assertEquals(16e-6, redesign.after().conductorArea(), 1e-12);
        assertEquals(180, redesign.after().lineCurrent(), 1e-9);
        assertEquals(1, redesign.ratingRatio(), 1e-12);
        assertEquals(1, redesign.linearLoadingRatio(), 1e-12);
        assertTrue(redesign.warnings().isEmpty(), redesign.warnings().toString());
    }

    /** From 50 to 60 Hz at the same volts the turns fall by a sixth, the known rule of rewinding (common practice). */
    @Test
    void sixtyHertzTakesFiveSixthsOfTheTurns() {
        Redesign redesign = Redesign.of(OLD, new Redesign.Wish(60, 400, PhaseJunction.STAR, 2, 0.925));
        assertEquals(10, redesign.after().turnsPerCoil());
        assertTrue(redesign.warnings().stream().anyMatch(w -> w.contains("core loses more")));
        assertTrue(redesign.warnings().stream().anyMatch(w -> w.contains("speed")));
    }

    /** Law: the flux that the induced-voltage equation gives before and after stands in the ratio reported. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void fluxFollowsFromTheInducedVoltage(long seed) {
        Random random = new Random(seed);
        PhaseJunction junction = PhaseJunction.values()[random.nextInt(2)];
        Redesign.Wish wish = new Redesign.Wish(random.nextBoolean() ? 50 : 60, 100 + 600 * random.nextDouble(),
                junction,
                1 << random.nextInt(3), 0.82 + 0.14 * random.nextDouble());
        Redesign redesign = Redesign.of(OLD, wish);
        double before = flux(OLD);
        double after = flux(redesign.after());
        assertEquals(redesign.fluxRatio(), after / before, 1e-12);
        assertEquals(OLD.currentDensity(), redesign.after().currentDensity(), 1e-3);
        assertEquals(OLD.conductorArea() * OLD.turnsPerCoil(), redesign.after().conductorArea() * redesign.after()
                .turnsPerCoil(), 1e-15);
    }

    private static double flux(RatedWinding w) {
        return Emf.flux(Emf.EXACT, w.phaseVolts(), w.hertz(), w.seriesTurns(), w.windingFactor());
    }

    /**
     * McPherson ch. 3 Ex. 1-3 turned round: from its core and volts the book's winding, 2 turns a coil and span 5,
     * comes out first.
     */
    @Test
    void bareCoreOfTheBookFindsTheWindingOfTheBook() {
        CoreGeometry core = new CoreGeometry(36, 0.30, 0.25, 0.2375, 0.013, 0.045, 160e-6);
        BareCoreWish wish = new BareCoreWish(MachineType.SALIENT_POLE, core, 6, 50, 119.38 * Math.sqrt(3),
                PhaseJunction.STAR, 20e3,
                0.96, 0.7, InsulationGrade.GRADE_2, 24, 1.4e-3);
        BareCore found = BareCore.design(wish);
        FirstWinding best = found.proposals().get(0);
        assertEquals(5, best.span());
        assertEquals(1, best.circuits());
        assertEquals(2, best.turnsPerCoil());
        assertEquals(0.96, best.densities().gap(), 0.002);
        assertTrue(found.lowestSeriesTurns() < 24 && found.highestSeriesTurns() > 24);
        for (FirstWinding one : found.proposals()) {
            assertTrue(one.squareCellFill() <= 0.7 + 1e-9);
            assertTrue(one.strands() <= 24);
            assertTrue(one.wire().bareDiameter() <= 1.4001e-3);
        }
    }

    @Test
    void bareCoreRefusesWhatCannotBeBalanced() {
        CoreGeometry core = new CoreGeometry(32, 0.30, 0.25, 0.2375, 0.013, 0.045, 160e-6);
        BareCoreWish wish = new BareCoreWish(MachineType.INDUCTION, core, 4, 50, 400, PhaseJunction.STAR, 20e3, 0.8,
                0.7,
                InsulationGrade.GRADE_2, 24, 1.4e-3);
        assertThrows(OutOfRange.class, () -> BareCore.design(wish));
    }

    /**
     * McPherson, ch. 3 Ex. 1-3: 0.96 T at 119.38 V a phase; a fifth more volts on the same turns would be 1.15 T in the
     * gap.
     */
    @Test
    void coreWarningsSeeTheDensityOfTheNewWinding() {
        CoreGeometry core = new CoreGeometry(36, 0.30, 0.25, 0.2375, 0.0165, 0.045, 160e-6);
        RatedWinding book = new RatedWinding(50, 119.38 * Math.sqrt(3), PhaseJunction.STAR, 1, 12, 2, 0.933, 12e-6, 60);
        Redesign same = Redesign.of(book, new Redesign.Wish(50, 119.38 * Math.sqrt(3), PhaseJunction.STAR, 1, 0.933));
        assertEquals(List.of(), same.coreWarnings(MachineType.SALIENT_POLE, core, 6));
        Redesign high = Redesign.of(book,
                new Redesign.Wish(50, 1.2 * 119.38 * Math.sqrt(3), PhaseJunction.STAR, 1, 0.933));
        assertEquals(2, high.after().turnsPerCoil());
        assertTrue(high.coreWarnings(MachineType.SALIENT_POLE, core, 6).get(0).contains("1.15 T lies above"));
    }
}

package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;

/** Insulation resistance over time. Factors to 40 degrees are those of IEEE 43-2013, 6.3, worked out beside each case. */
class InsulationRunTest {

    private final Shop shop = Bench.shop();

    private static Job job(String thermalClass, String conductor, double[]... secondsMegohmCelsius) {
        List<String> readings = new ArrayList<>();
        for (double[] r : secondsMegohmCelsius) {
            readings.add(Bench.reading("r" + readings.size(), "INSULATION_RESISTANCE", "main-stator", "TO_EARTH", "",
                    r[1] + "e6", Double.toString(r[2]), "ir-tester-1", "AS_FOUND", "'afterSeconds':" + r[0]));
        }
        return Bench.job("nameplate", "{'schema':1,'voltageV':3300" + (thermalClass.isEmpty() ? ""
                        : ",'thermalClass':'" + thermalClass + "'") + "}",
                "winding/main-stator", "{'schema':1,'role':'main-stator','asWound':false,'conductor':'" + conductor + "'}",
                "inspection", Bench.inspection(readings.toArray(String[]::new)));
    }

    private List<InsulationRun> runs(Job job) {
        return InsulationRun.of(job, shop, JobChecks.verdicts(job, shop));
    }

    @Test
    void theReadingsStandInTheOrderOfTheirTimesAsReadAndAt40Degrees() {
        // thermoplastic, 50 degrees: twice the reading
        InsulationRun run = runs(job("A", "RECTANGULAR", new double[] {600, 400, 50}, new double[] {30, 100, 50},
                new double[] {60, 150, 50}, new double[] {180, 300, 50})).get(0);
        assertEquals(List.of(30.0, 60.0, 180.0, 600.0), run.points().stream().map(InsulationRun.Point::seconds).toList());
        assertEquals(List.of(100e6, 150e6, 300e6, 400e6), run.points().stream().map(InsulationRun.Point::ohms).toList());
        assertEquals(200e6, run.points().get(0).at40(), 1);
        assertTrue(run.rule().contains("IEEE 43-2013, 6.3") && run.rule().contains("every 10 K"), run.rule());
        // 400/150 and 150/100
        assertTrue(run.says().contains("2.67") && run.says().contains("1.5"), run.says());
    }

    @Test
    void withoutAThermalClassTheLowerOfBothRulesIsTakenAndSaid() {
        // 20 degrees: a quarter by halving, 0.762 for thermosetting
        InsulationRun run = runs(job("", "RECTANGULAR", new double[] {30, 100, 20}, new double[] {60, 150, 20})).get(0);
        assertEquals(25e6, run.points().get(0).at40(), 1);
        assertTrue(run.rule().contains("thermal class is not recorded"), run.rule());
        assertTrue(run.says().startsWith("No polarisation index"), run.says());
    }

    @Test
    void aSecondRunIsNotMixedWithTheFirst() {
        Job job = job("F", "RECTANGULAR", new double[] {60, 100, 40}, new double[] {600, 150, 40},
                new double[] {60, 200, 40}, new double[] {600, 800, 40});
        assertEquals(2, runs(job).size());
        assertEquals(4.0, Bench.verdict(job, shop, "main-stator.polarisation-index.as-found").value(), 1e-9);
        Job broken = job("F", "RECTANGULAR", new double[] {60, 100, 40}, new double[] {600, 150, 40},
                new double[] {60, 200, 40});
        assertEquals(1.5, Bench.verdict(broken, shop, "main-stator.polarisation-index.as-found").value(), 1e-9,
                "ten minutes of one run are not divided by one minute of another");
    }

    @Test
    void whyTheIndexDoesNotDecideIsSaidBesideIt() {
        Job random = job("F", "ROUND", new double[] {60, 700, 40}, new double[] {600, 710, 40});
        assertTrue(runs(random).get(0).says().contains("small random windings"), runs(random).get(0).says());
        Job high = job("F", "RECTANGULAR", new double[] {60, 6200, 40}, new double[] {600, 7100, 40});
        assertTrue(runs(high).get(0).says().contains("5 G"), runs(high).get(0).says());
        assertEquals(Outcome.NO_LIMIT_SET, Bench.outcome(high, shop, "main-stator.polarisation-index.as-found"));
    }

    @Test
    void aWindingThatWarmsDuringTheRunIsSaid() {
        Job job = job("F", "RECTANGULAR", new double[] {60, 100, 40}, new double[] {600, 300, 52});
        assertTrue(Bench.verdict(job, shop, "main-stator.polarisation-index.as-found").reason().contains("12 K"));
    }

    @Test
    void oneReadingIsNoCurve() {
        assertTrue(runs(job("F", "RECTANGULAR", new double[] {60, 100, 40})).isEmpty());
    }
}

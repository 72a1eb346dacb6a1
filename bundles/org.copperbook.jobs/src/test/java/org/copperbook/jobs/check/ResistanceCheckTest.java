package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResistanceCheckTest {

    private final Shop shop = Bench.shop();

    private static String pair(String mark, String observed, String celsius, String instrument) {
        return Bench.reading(mark, "RESISTANCE", "main-stator", "TERMINAL_PAIR", mark, observed, celsius, instrument,
                "AS_FOUND", "");
    }

    private static Job triple(String connection, String uv, String vw, String wu) {
        return Bench.job("nameplate", "{'schema':1,'connection':'" + connection + "','voltageV':400}", "inspection",
                Bench.inspection(pair("U-V", uv, "20", "bridge-1"), pair("V-W", vw, "20", "bridge-1"),
                        pair("W-U", wu, "20", "bridge-1")));
    }

    /** Circuit identity for an unbalanced star (IEC 60034-2-1): 0.4520, 0.4580, 0.4610 give 0.2275, 0.2245, 0.2335. */
    @Test
    void phasesOfAStarFollowFromTheLines() {
        Job job = triple("star", "0.4520", "0.4580", "0.4610");
        assertEquals(0.2275, Bench.verdict(job, shop, "main-stator.resistance.as-found.u").value(), 1e-9);
        assertEquals(0.2245, Bench.verdict(job, shop, "main-stator.resistance.as-found.v").value(), 1e-9);
        assertEquals(0.2335, Bench.verdict(job, shop, "main-stator.resistance.as-found.w").value(), 1e-9);
    }

    /** Without a known connection the lines are compared: largest deviation over mean 1.0940919 % (NEMA MG 1). */
    @Test
    void linesAreComparedWhereTheConnectionIsNotKnown() {
        Job job = triple("", "0.4520", "0.4580", "0.4610");
        Verdict v = Bench.verdict(job, shop, "main-stator.unbalance.as-found");
        assertEquals(0.010940919, v.value(), 1e-8);
        assertEquals(Outcome.MEETS, v.outcome());
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(job, shop, "main-stator.phases.as-found"));
    }

    /** Equal line readings of 0.0460 ohm: star phase 0.023, delta phase 0.069 (circuit identity). */
    @ParameterizedTest
    @CsvSource({"star, 0.023", "parallel star, 0.023", "delta, 0.069", "series delta, 0.069"})
    void starAndDeltaAreWorkedOutAsJoined(String connection, double phase) {
        Job job = triple(connection, "0.0460", "0.0460", "0.0460");
        assertEquals(phase, Bench.verdict(job, shop, "main-stator.resistance.as-found.v").value(), 1e-9);
    }

    /** Unbalance guide 2 % random and 1 % form-wound, from a secondary summary of AR100 practice. */
    @ParameterizedTest
    @CsvSource({"ROUND, 0.2290, 0.2275, 0.2275, MEETS", "ROUND, 0.2380, 0.2275, 0.2275, FAILS",
        "RECTANGULAR, 0.2325, 0.2275, 0.2275, FAILS", "ROUND, 0.2325, 0.2275, 0.2275, MEETS"})
    void unbalanceIsHeldToTheWayOfWinding(String conductor, String u, String v, String w, Outcome outcome) {
        Job job = Bench.job("winding/main-stator", "{'schema':1,'role':'main-stator','asWound':false,'conductor':'"
                + conductor + "','readings':[" + phase("U", u) + "," + phase("V", v) + "," + phase("W", w) + "]}");
        assertEquals(outcome, Bench.outcome(job, shop, "main-stator.unbalance.as-found"));
    }

    private static String phase(String mark, String ohms) {
        return Bench.reading("p" + mark, "RESISTANCE", "main-stator", "PHASE", mark, ohms, "20", "bridge-1",
                "AS_FOUND", "");
    }

    /** 0.04620 ohm at 14 degrees against 0.04925 at 31, k = 235: 0.047313253 and 0.0472133459 at 20, -0.211161 %. */
    @Test
    void asLeftIsComparedWithAsFoundAtOneTemperature() {
        Job job = Bench.job("winding/main-stator", "{'schema':1,'role':'main-stator','asWound':false,'readings':["
                + Bench.reading("f", "RESISTANCE", "main-stator", "PHASE", "U", "0.04620", "14", "bridge-1", "AS_FOUND",
                        "") + "]}",
                "run-up", "{'schema':1,'readings':[" + Bench.reading("l", "RESISTANCE", "main-stator", "PHASE", "U",
                        "0.04925", "31", "bridge-1", "AS_LEFT", "") + "]}");
        assertEquals(0.047313253, Bench.verdict(job, shop, "main-stator.resistance.as-found.u").value(), 1e-9);
        assertEquals(0.0472133459, Bench.verdict(job, shop, "main-stator.resistance.as-left.u").value(), 1e-10);
        Verdict v = Bench.verdict(job, shop, "main-stator.deviation.as-left.u");
        assertEquals(-0.00211161019, v.value(), 1e-8);
        assertEquals(Outcome.MEETS, v.outcome());
    }

    @Test
    void anOpenLineIsAFindingAndNeverRefused() {
        Job job = triple("star", "ABOVE_RANGE", "0.4580", "ABOVE_RANGE");
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, "main-stator.resistance.as-found.u-v"));
        Verdict v = Bench.verdict(job, shop, "main-stator.phases.as-found");
        assertEquals(Outcome.FAILS, v.outcome());
        assertTrue(v.reason().contains("phase U is open"), v.reason());
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(job, shop, "main-stator.unbalance.as-found"));
    }

    @ParameterizedTest
    @CsvSource({"ABOVE_RANGE, ABOVE_RANGE, ABOVE_RANGE", "UNSTABLE, 0.4, NOT_POSSIBLE", "BELOW_RESOLUTION, 0.4, 0.4",
        "0, 0, 0", "-1, 0.4, 0.4", "1e300, 1e-300, 1", "0.4, 0.4, 99"})
    void noTripleIsRefused(String uv, String vw, String wu) {
        for (String connection : List.of("star", "delta", "")) {
            assertFalse(JobChecks.verdicts(triple(connection, uv, vw, wu), shop).isEmpty());
        }
    }

    /** In a delta with one phase open one line reading is the sum of the two others (circuit identity). */
    @Test
    void anOpenPhaseOfADeltaIsFound() {
        Verdict v = Bench.verdict(triple("delta", "0.200", "0.100", "0.100"), shop, "main-stator.phases.as-found");
        assertTrue(v.reason().contains("phase U is open"), v.reason());
    }

    @Test
    void withoutTheWindingTemperatureNothingIsCorrectedAndNothingAssumed() {
        Job job = Bench.job("inspection", Bench.inspection(Bench.reading("r", "RESISTANCE", "main-rotor",
                "TERMINAL_PAIR", "F1-F2", "0.612", "", "bridge-1", "AS_FOUND", "'ambientCelsius':20")));
        Verdict v = Bench.verdict(job, shop, "main-rotor.resistance.as-found.whole");
        assertEquals(Outcome.NOT_MEASURED, v.outcome());
        assertNull(v.value());
        assertTrue(v.reason().contains("temperature"), v.reason());
        assertFalse(v.settle().isEmpty());
    }

    @Test
    void aTemperatureNoWindingHasIsSaidAndNothingElseFails() {
        Job job = Bench.job("inspection", Bench.inspection(Bench.reading("r", "RESISTANCE", "main-rotor",
                "TERMINAL_PAIR", "F1-F2", "0.612", "1000", "bridge-1", "AS_FOUND", "")));
        Verdict v = Bench.verdict(job, shop, "main-rotor.resistance.as-found.whole");
        assertEquals(Outcome.NOT_MEASURED, v.outcome());
        assertTrue(v.reason().contains("1000"), v.reason());
    }

    /** trade practice: a two-wire multimeter with 0.1 ohm resolution cannot judge a 0.3 ohm winding. */
    @Test
    void aMeterThatCannotResolveTheWindingMakesItDoubtful() {
        Job job = Bench.job("nameplate", "{'schema':1,'makerLimits':[{'id':'resistance.exciter-rotor','lower':0.25,"
                + "'upper':0.35,'unit':'ohm','source':'plate','standing':'MAKER'}]}", "inspection",
                Bench.inspection(Bench.reading("r", "RESISTANCE", "exciter-rotor", "PHASE", "U", "0.4", "20",
                        "multi-1", "AS_FOUND", "'method':'TWO_WIRE'")));
        Verdict v = Bench.verdict(job, shop, "exciter-rotor.resistance.as-found.u");
        assertEquals(Outcome.DOUBTFUL, v.outcome());
        assertEquals(0.3, v.value(), 1e-9);
        assertTrue(v.settle().contains("four-wire"), v.settle());
        assertEquals(Outcome.DOUBTFUL, Bench.outcome(job, shop, "meter.inspection.r"));
    }

    @Test
    void anInstrumentOutOfCalibrationOnTheDayCannotSayMeets() {
        String late = phase("U", "0.2275").replace("2026-03-03", "2027-02-01");
        String winding = "{'schema':1,'role':'main-stator','asWound':false,'readings':[%s," + phase("V", "0.2275") + ","
                + phase("W", "0.2275") + "]}";
        Job good = Bench.job("winding/main-stator", winding.formatted(phase("U", "0.2275")));
        Job overdue = Bench.job("winding/main-stator", winding.formatted(late));
        assertEquals(Outcome.MEETS, Bench.outcome(good, shop, "main-stator.unbalance.as-found"));
        Verdict v = Bench.verdict(overdue, shop, "main-stator.unbalance.as-found");
        assertEquals(Outcome.DOUBTFUL, v.outcome());
        assertTrue(v.reason().contains("2027-01-12"), v.reason());
        assertEquals(Outcome.DOUBTFUL, Bench.outcome(overdue, shop, "meter.winding.main-stator.pU"));
        String title = Bench.verdict(overdue, shop, "meter.winding.main-stator.pU").title();
        assertTrue(title.contains("Main stator") && title.contains("U"), title);
    }

    @ParameterizedTest
    @CsvSource({"0.2275, DOUBTFUL", "0.2500, FAILS"})
    void anUnknownInstrumentNeverMeetsButCanFail(String u, Outcome outcome) {
        String winding = "{'schema':1,'role':'main-stator','asWound':false,'readings':["
                + (phase("U", u) + "," + phase("V", "0.2275") + "," + phase("W", "0.2275")).replace("bridge-1", "??")
                + "]}";
        Verdict v = Bench.verdict(Bench.job("winding/main-stator", winding), shop, "main-stator.unbalance.as-found");
        assertEquals(outcome, v.outcome());
        assertNull(v.expandedU());
    }

    @Test
    void aSupersededReadingIsLeftOutAndStaysInThePart() {
        String right = phase("U", "0.2275").replace("'pU'", "'pU2'").replace("'state'",
                "'supersedes':'pU','reason':'typed wrong','state'");
        Job job = Bench.job("winding/main-stator", "{'schema':1,'role':'main-stator','asWound':false,'readings':["
                + right + "," + phase("U", "0.9") + "," + phase("V", "0.2275") + "," + phase("W", "0.2275") + "]}");
        assertEquals(0.2275, Bench.verdict(job, shop, "main-stator.resistance.as-found.u").value(), 1e-9);
        assertEquals(4, job.windingAsFound(org.copperbook.jobs.winding.WindingRole.MAIN_STATOR).orElseThrow()
                .readings().size());
    }

    /** Twelve leads: six sections of 34.8 milliohm among themselves, in either system of marks. */
    @ParameterizedTest
    @CsvSource({"U1-U2 V1-V2 W1-W2 U5-U6 V5-V6 W5-W6", "T1-T4 T2-T5 T3-T6 T7-T10 T8-T11 T9-T12",
        "u2-u1 V1-V2 W1-W2 U6-U5 V5-V6 W5-W6"})
    void theSectionsOfATwelveLeadWindingAreComparedWithEachOther(String marks) {
        List<String> readings = new ArrayList<>();
        for (String mark : marks.split(" ")) {
            readings.add(pair(mark, mark.startsWith("V5") || mark.startsWith("T8") ? "0.0370" : "0.0348", "20",
                    "bridge-1"));
        }
        for (String whole : List.of("U", "V", "W")) {
            readings.add(Bench.reading("w" + whole, "RESISTANCE", "main-stator", "PHASE", whole, "0.0696", "20",
                    "bridge-1", "AS_FOUND", ""));
        }
        Job job = Bench.job("inspection", Bench.inspection(readings.toArray(String[]::new)));
        assertEquals(Outcome.MEETS, Bench.outcome(job, shop, "main-stator.unbalance.as-found"));
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, "main-stator.unbalance.as-found.section"));
        String odd = marks.startsWith("T") ? "t8-t11" : "v5-v6";
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, "main-stator.resistance.as-found." + odd));
    }

    @Test
    void theOddCoilGroupIsBlamedAndNotItsNeighbours() {
        StringBuilder groups = new StringBuilder();
        for (int i = 1; i <= 6; i++) {
            groups.append(i == 1 ? "" : ",").append("{'number':").append(i).append(",'phase':'U','resistance':")
                    .append(Bench.reading("g" + i, "RESISTANCE", "main-stator", "COIL_GROUP", "" + i,
                            i == 4 ? "0.0750" : "0.1000", "20", "bridge-1", "AS_FOUND", "")).append("}");
        }
        Job job = Bench.job("winding/main-stator", "{'schema':1,'role':'main-stator','asWound':false,'groups':["
                + groups + "]}");
        for (int i = 1; i <= 6; i++) {
            assertEquals(i == 4 ? Outcome.FAILS : Outcome.MEETS,
                    Bench.outcome(job, shop, "main-stator.resistance.as-found.group-" + i));
        }
    }

    @Test
    void unevenGroupsAreComparedPerTurn() {
        String job = "{'schema':1,'role':'main-stator','asWound':false,'turnsPerCoil':10,'groups':[%s]}";
        StringBuilder groups = new StringBuilder();
        int[] coils = {3, 2, 2, 2};
        for (int i = 0; i < coils.length; i++) {
            String c = String.join(",", java.util.Collections.nCopies(coils[i], "{'goSlot':1,'returnSlot':8}"));
            groups.append(i == 0 ? "" : ",").append("{'number':").append(i + 1).append(",'coils':[").append(c)
                    .append("],'resistance':").append(Bench.reading("g" + i, "RESISTANCE", "main-stator", "COIL_GROUP",
                            "" + (i + 1), Double.toString(0.05 * coils[i]), "20", "bridge-1", "AS_FOUND", ""))
                    .append("}");
        }
        Job uneven = Bench.job("winding/main-stator", job.formatted(groups));
        for (int i = 1; i <= 4; i++) {
            assertEquals(Outcome.MEETS, Bench.outcome(uneven, shop, "main-stator.resistance.as-found.group-" + i));
        }
    }
}

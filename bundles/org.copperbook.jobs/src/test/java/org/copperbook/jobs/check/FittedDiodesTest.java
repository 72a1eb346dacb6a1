package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the diodes fitted must carry, of which lot they are, and what is recorded of them. */
class FittedDiodesTest {

    private static final String FITTED = "'fitted':{'makersPart':'SD-40','lot':'%s','complete':true,'stud':'M8',"
            + "'repetitivePeakV':%s,'averageA':%s,'wrench':'wrench-1','compound':'on the base','by':'tester-1',"
            + "'at':'2026-03-03T09:00:00Z'}";

    private final Shop shop = Bench.shop();

    private static Job set(String circuit, String plate, String fields) {
        return Bench.job("nameplate", plate, "rectifier", "{'schema':1,'circuit':'" + circuit + "'"
                + (fields.isEmpty() ? "" : "," + fields) + "}");
    }

    /**
     * A bridge into 400 V dc asks 418.88 V peak reverse of its diodes (P. S. Bimbhra, Power Electronics, example 3.19); a
     * diode carries a third of the direct current, 66.67 A of 200 A (B. R. Gupta and V. Singhal, example 3.31). The
     * margins 2.5 and 2 are common practice, no source: 1047.2 V and 133.3 A.
     */
    @ParameterizedTest
    @CsvSource({"1200, 150, MEETS, MEETS", "1000, 150, FAILS, MEETS", "1200, 120, MEETS, FAILS"})
    void diodesMustCarryWhatTheFieldAsks(String peak, String mean, Outcome volts, Outcome amps) {
        Job job = set("FULL_WAVE", "{'schema':1,'mainFieldV':400,'mainFieldA':200}", FITTED.formatted("A1", peak, mean));
        RectifierDemand need = RectifierDemand.of(job, shop).orElseThrow();
        assertEquals(418.88, need.peakReverseV().orElseThrow(), 0.01);
        assertEquals(66.67, need.meanA().orElseThrow(), 0.01);
        assertEquals(115.5, need.rmsA().orElseThrow(), 0.05);
        Verdict v = Bench.verdict(job, shop, "rectifier.rating.peak");
        assertEquals(volts, v.outcome(), v.reason());
        assertEquals(418.879 * 2.5, v.bounds().lower(), 0.01);
        assertEquals(HoldPoint.RECTIFIER_COMPLETE, v.point());
        assertTrue(v.source().contains("common practice"), v.source());
        assertEquals(amps, Bench.outcome(job, shop, "rectifier.rating.mean"));
    }

    /** Half wave gives 0.675 of the line volts (M. H. Rashid, Power Electronics, chapter 3), peak reverse root 2 of them. */
    @Test
    void halfWaveAsksMoreVoltsOfItsDiodes() {
        RectifierDemand need = RectifierDemand.of(set("HALF_WAVE", "{'schema':1,'mainFieldV':67.5,'mainFieldA':30}", ""),
                shop).orElseThrow();
        assertEquals(100, need.exciterLineV().orElseThrow(), 0.1);
        assertEquals(141.4, need.peakReverseV().orElseThrow(), 0.1);
        assertEquals(10, need.meanA().orElseThrow(), 1e-9);
    }

    @Test
    void theExciterArmatureMeasuredHigherGoesBeforeTheField() {
        Job job = set("FULL_WAVE", "{'schema':1,'mainFieldV':40,'mainFieldA':20}", "'duty':{'exciterLineV':100}");
        assertEquals(Math.sqrt(2) * 100, RectifierDemand.of(job, shop).orElseThrow().peakReverseV().orElseThrow(), 1e-9);
    }

    @Test
    void withoutFieldDataTheRatingStaysOpenAndSaysWhatIsMissing() {
        Job job = set("FULL_WAVE", "{'schema':1,'mainFieldA':20}", FITTED.formatted("A1", "600", "40"));
        Verdict v = Bench.verdict(job, shop, "rectifier.rating.peak");
        assertEquals(Outcome.NO_LIMIT_SET, v.outcome());
        assertTrue(v.reason().contains("main-field volts"), v.reason());
        assertEquals(Outcome.MEETS, Bench.outcome(job, shop, "rectifier.rating.mean"));
    }

    @Test
    void whileNoSetIsFittedTheNeedIsShownAndHoldsNothingUp() {
        Verdict v = Bench.verdict(set("FULL_WAVE", "{'schema':1,'mainFieldV':40,'mainFieldA':20}", ""), shop,
                "rectifier.rating.peak");
        assertEquals(Outcome.NOT_MEASURED, v.outcome());
        assertNull(v.point());
    }

    private static Job lots(String set, String... ofPositions) {
        StringBuilder positions = new StringBuilder();
        for (int i = 0; i < ofPositions.length; i++) {
            positions.append(i == 0 ? "" : ",").append("{'position':'D").append(i + 1).append("','plate':'")
                    .append(i < 3 ? "POSITIVE" : "NEGATIVE").append("'")
                    .append(ofPositions[i].isEmpty() ? "" : ",'lot':'" + ofPositions[i] + "'").append("}");
        }
        return set("FULL_WAVE", "{'schema':1}", "'positions':[" + positions + "]," + FITTED.formatted(set, "600", "40"));
    }

    /** Mixed lots on one plate: common practice, no source. Forward and reverse types are two parts and two lots. */
    @Test
    void theDiodesOfOnePlateAreOfOneLot() {
        String id = "rectifier.lots";
        assertEquals(Outcome.MEETS, Bench.outcome(lots("2026-18", "", "", "", "", "", ""), shop, id));
        assertEquals(Outcome.MEETS, Bench.outcome(lots("", "K1", "K1", "k1 ", "A7", "A7", "A7"), shop, id));
        assertEquals(Outcome.MEETS, Bench.outcome(lots("K1 / A7", "", "", "K1", "", "", ""), shop, id));
        assertEquals(Outcome.FAILS, Bench.outcome(lots("2026-18", "", "2025-40", "", "", "", ""), shop, id));
        assertEquals(Outcome.FAILS, Bench.outcome(lots("", "K1", "K2", "K1", "A7", "A7", "A7"), shop, id));
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(lots("", "", "", "", "", "", ""), shop, id));
    }

    @Test
    void whatIsNotRecordedOfTheSetIsNamed() {
        Job whole = lots("A1", "", "", "", "", "", "");
        assertEquals(Outcome.MEETS, Bench.outcome(whole, shop, "rectifier.traceable"));
        Verdict v = Bench.verdict(set("FULL_WAVE", "{'schema':1}", "'fitted':{'makersPart':'SD-40','stud':'M8'}"), shop,
                "rectifier.traceable");
        assertEquals(Outcome.NOT_MEASURED, v.outcome());
        assertTrue(v.reason().contains("torque wrench") && v.reason().contains("compound"), v.reason());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1/4-28 UNF-2A | 1/4-28", "10-32 | 10-32", "m8x1.25 | M8", "M 12 | M12",
        "press fit | PRESS FIT"})
    void aStudIsKnownByItsThread(String written, String thread) {
        assertEquals(thread, StudThread.of(written));
    }

    /** The usual torque of an M8 stud is a hint (typical of data sheets, from memory) and never decides. */
    @Test
    void theHintIsFoundHoweverTheStudIsWritten() {
        Job job = set("FULL_WAVE", "{'schema':1}", "'positions':[{'position':'D1','torqueNm':5}],"
                + "'fitted':{'stud':'M8x1.25'}");
        Verdict v = Bench.verdict(job, shop, "diode.d1.torque");
        assertEquals(Outcome.NO_LIMIT_SET, v.outcome());
        assertTrue(v.reason().contains("4 N m to 6 N m"), v.reason());
    }

    /** Volts one way and ohms the other: 5 ohm backwards is low both ways, not an open diode range of 5 V. */
    @Test
    void eachDirectionIsReadInItsOwnUnit() {
        String f = Bench.reading("f", "DIODE_VOLTS", "exciter-rotor", "DIODE", "D1", "0.5", "", "multi-1", "AS_FOUND",
                "'isolated':true");
        String r = Bench.reading("r", "DIODE_OHMS", "exciter-rotor", "DIODE", "D1", "5", "", "multi-1", "AS_FOUND",
                "'isolated':true");
        Job job = set("FULL_WAVE", "{'schema':1}", "'positions':[{'position':'D1','asFoundForward':" + f
                + ",'asFoundReverse':" + r + "}]");
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, "diode.d1.as-found"));
    }
}

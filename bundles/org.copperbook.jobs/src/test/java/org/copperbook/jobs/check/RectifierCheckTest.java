package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RectifierCheckTest {

    private final Shop shop = Bench.shop();

    private static String diode(String field, String quantity, String observed, boolean isolated) {
        return "'" + field + "':" + Bench.reading(field, quantity, "exciter-rotor", "DIODE", "D", observed, "",
                "multi-1", "AS_FOUND", "'isolated':" + isolated);
    }

    private static String position(int n, String forward, String reverse, boolean isolated, String more) {
        boolean positive = n <= 3;
        return "{'position':'D" + n + "','plate':'" + (positive ? "POSITIVE" : "NEGATIVE") + "','basePolarity':'"
                + (positive ? "CATHODE_BASE" : "ANODE_BASE") + "',"
                + diode("asFoundForward", "DIODE_OHMS", forward, isolated) + ","
                + diode("asFoundReverse", "DIODE_OHMS", reverse, isolated) + (more.isEmpty() ? "" : "," + more) + "}";
    }

    private static Job set(String first, String more) {
        StringBuilder positions = new StringBuilder(first);
        for (int n = 2; n <= 6; n++) {
            positions.append(",").append(position(n, "12", "200000", true, ""));
        }
        return Bench.job("rectifier", "{'schema':1,'circuit':'FULL_WAVE','positions':[" + positions + "]"
                + (more.isEmpty() ? "" : "," + more) + "}");
    }

    /** Good low one way and high the other; about 10 ohm forward, 30 to 300 kilohm reverse: TM 55-1930-209-14P-9-4. */
    @ParameterizedTest
    @CsvSource({"10, 30000, true, MEETS", "10, 300000, true, MEETS", "10, ABOVE_RANGE, true, MEETS",
        "8, 9, true, FAILS", "ABOVE_RANGE, ABOVE_RANGE, true, FAILS", "BELOW_RESOLUTION, BELOW_RESOLUTION, true, FAILS",
        "8, 9, false, DOUBTFUL", "10, 200000, false, DOUBTFUL", "ABOVE_RANGE, 10, true, DOUBTFUL",
        "UNSTABLE, 200000, true, NOT_MEASURED", "10, 9000, true, DOUBTFUL"})
    void aDiodeIsClassedByBothReadingsAndItsIsolation(String f, String r, boolean isolated, Outcome outcome) {
        Verdict v = Bench.verdict(set(position(1, f, r, isolated, ""), ""), shop, "diode.d1.as-found");
        assertEquals(outcome, v.outcome(), v.reason());
        assertEquals(outcome != Outcome.FAILS, v.concedable());
        if (!isolated) {
            assertTrue(v.settle().contains("Lift the lead"), v.settle());
        }
    }

    @Test
    void oneBadDiodeAsksForTheCompleteSet() {
        Verdict v = Bench.verdict(set(position(1, "8", "9", true, ""), ""), shop, "rectifier.complete-set");
        assertEquals(Outcome.FAILS, v.outcome());
        assertEquals(HoldPoint.RECTIFIER_COMPLETE, v.point());
    }

    @ParameterizedTest
    @CsvSource({"true, MEETS", "false, FAILS"})
    void aMixedSetFails(String complete, Outcome outcome) {
        Job job = set(position(1, "8", "9", true, ""), "'fitted':{'complete':" + complete + ",'makersPart':'SD-40'}");
        assertEquals(outcome, Bench.outcome(job, shop, "rectifier.complete-set"));
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(job, shop, "diode.d3.as-left"));
    }

    @Test
    void aWrongBasePolarityFailsAndMayNotBeConceded() {
        Job job = set(position(1, "12", "200000", true, "").replace("CATHODE_BASE", "ANODE_BASE"), "");
        Verdict v = Bench.verdict(job, shop, "diode.d1.polarity");
        assertEquals(Outcome.FAILS, v.outcome());
        assertFalse(v.concedable());
        assertEquals(Outcome.MEETS, Bench.outcome(job, shop, "diode.d4.polarity"));
    }

    /** Stud nut of the rotating diodes 28 to 30 lbf in, 3.16 to 3.39 N m (US Army TM 9-6115-645-24). */
    @ParameterizedTest
    @CsvSource({"3.27, 0, DOUBTFUL", "4.2, 0, FAILS", "3.27, 1, MEETS", "2.5, 1, FAILS"})
    void torqueIsJudgedByTheDataSheetOnly(String torque, int fine, Outcome outcome) {
        Job job = set(position(1, "12", "200000", true, "'torqueNm':" + torque),
                "'fitted':{'complete':true,'makersPart':'SD-40','stud':'1/4-28','torqueMinNm':3.16,'torqueMaxNm':3.39,"
                        + "'wrench':'wrench-" + (fine == 1 ? 2 : 1) + "'}");
        Shop fineWrench = Bench.withInstrument(shop, "{'id':'wrench-2','name':'fine wrench','kind':'TORQUE_WRENCH',"
                + "'ranges':[{'quantity':'N m','upTo':6,'resolution':0.01,'percentOfReading':1,'digits':0}]}");
        assertEquals(outcome, Bench.outcome(job, fineWrench, "diode.d1.torque"));
    }

    @Test
    void withoutADataSheetTheUsualTorqueIsAHintAndNeverDecides() {
        Job job = set(position(1, "12", "200000", true, "'torqueNm':2.8"),
                "'fitted':{'complete':true,'stud':'1/4-28'}");
        Verdict v = Bench.verdict(job, shop, "diode.d1.torque");
        assertEquals(Outcome.NO_LIMIT_SET, v.outcome());
        assertTrue(v.reason().contains("hint only"), v.reason());
    }

    @Test
    void positionsAreCountedOnTheirPlates() {
        assertEquals(Outcome.MEETS, Bench.outcome(set(position(1, "12", "2e5", true, ""), ""), shop,
                "rectifier.positions"));
        assertEquals(Outcome.FAILS, Bench.outcome(set(position(1, "12", "2e5", true, "").replace("POSITIVE",
                "NEGATIVE"), ""), shop, "rectifier.positions"));
        assertEquals(Outcome.FAILS, Bench.outcome(set(position(2, "12", "2e5", true, ""), ""), shop,
                "rectifier.positions"));
        Job three = Bench.job("rectifier", "{'schema':1,'circuit':'FULL_WAVE','positions':["
                + position(1, "12", "2e5", true, "") + "]}");
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(three, shop, "rectifier.positions"));
    }

    @Test
    void twoDiodesUnderOneNameAreJudgedApart() {
        Job job = set(position(2, "8", "9", true, ""), "");
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, "diode.d2.as-found"));
        assertEquals(Outcome.MEETS, Bench.outcome(job, shop, "diode.d2.as-found.again-2"));
    }

    /** Suppressor at least 1 megohm by TM 5-6115-593-34; another manual is content with 15 kilohm. */
    @ParameterizedTest
    @CsvSource({"ABOVE_RANGE, true, MEETS", "1.5e6, true, MEETS", "20000, true, FAILS", "20000, false, DOUBTFUL",
        "NOT_POSSIBLE, true, NOT_MEASURED"})
    void theSuppressorReadsOpen(String observed, boolean isolated, Outcome outcome) {
        Job job = set(position(1, "12", "2e5", true, ""), "'suppressor':{'kind':'VARISTOR','asFound':"
                + Bench.reading("s", "RESISTANCE", "exciter-rotor", "SUPPRESSOR", "", observed, "", "multi-1",
                        "AS_FOUND", "'isolated':" + isolated) + "}");
        assertEquals(outcome, Bench.outcome(job, shop, "suppressor.as-left"));
    }
}

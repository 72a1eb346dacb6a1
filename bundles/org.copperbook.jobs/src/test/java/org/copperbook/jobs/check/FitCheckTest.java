package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Zones as bearing makers print them: k5 from 30 to 50 mm +2 to +13, H7 from 80 to 120 mm 0 to +35 micrometres. The
 * micrometer is good to 2 counts of 1 micrometre, a rectangle: expanded uncertainty 2 x 2/sqrt(3) = 2.3 micrometres.
 */
class FitCheckTest {

    private final Shop shop = Bench.withInstrument(Bench.shop(), "{'id':'MIC','name':'Micrometer','kind':'MICROMETER',"
            + "'calibrationDue':'2030-01-01','ranges':[{'quantity':'mm','upTo':150,'resolution':0.001,'percentOfReading':0,"
            + "'digits':2}]}");

    private static Job fit(String fields) {
        return Bench.job("inspection", "{'schema':1,'fits':[{'end':'DRIVE_END'," + fields
                + ",'at':'2026-03-03T09:00:00Z'}]}");
    }

    private Verdict shaft(double mm, String more) {
        return Bench.verdict(fit("'seat':'SHAFT','nominalMm':45,'zone':'k5','measuredMm':" + mm + more), shop,
                "fit.drive-end.shaft");
    }

    @ParameterizedTest
    @CsvSource({"45.008, MEETS", "45.001, DOUBTFUL", "45.0125, DOUBTFUL", "45.018, FAILS", "44.995, FAILS"})
    void aShaftSeatIsJudgedAgainstItsZoneWithTheDoubtOfTheMicrometer(double mm, Outcome outcome) {
        Verdict v = shaft(mm, ",'instrument':'MIC'");
        assertEquals(outcome, v.outcome(), v.reason());
        assertEquals(2, v.bounds().lower());
        assertEquals(13, v.bounds().upper());
        assertEquals(2 * 2 / Math.sqrt(3), v.expandedU(), 1e-6);
        assertTrue(v.source().contains("ISO 286-2") && v.source().contains("k5"), v.source());
        assertNull(v.point(), "as found it diagnoses and holds nothing back");
    }

    @Test
    void theWorseOfTwoDirectionsDecidesAndTheirDifferenceIsSaid() {
        Verdict v = shaft(45.008, ",'acrossMm':44.99,'instrument':'MIC'");
        assertEquals(Outcome.FAILS, v.outcome());
        assertTrue(v.reason().contains("18 µm"), v.reason());
    }

    @Test
    void withoutAnInstrumentNothingMeets() {
        assertEquals(Outcome.DOUBTFUL, shaft(45.008, "").outcome());
    }

    @Test
    void aHousingIsJudgedByItsOwnZone() {
        Verdict v = Bench.verdict(fit("'seat':'HOUSING','nominalMm':100,'zone':'H7','measuredMm':100.02,'instrument':'MIC'"), shop,
                "fit.drive-end.housing");
        assertEquals(Outcome.MEETS, v.outcome());
        assertEquals(35, v.bounds().upper());
    }

    @ParameterizedTest
    @CsvSource({"'seat':'SHAFT';'nominalMm':45;'zone':'K6', housing", "'seat':'SHAFT';'nominalMm':45;'zone':'q9', none of the zones",
        "'seat':'SHAFT';'nominalMm':300;'zone':'k5', print", "'seat':'SHAFT';'nominalMm':45, No tolerance zone",
        "'seat':'SHAFT';'nominalMm':900;'zone':'h6', 500"})
    void whatNoTableSaysHasNoLimitAndSaysWhy(String fields, String said) {
        Verdict v = Bench.verdict(fit(fields.replace(';', ',') + ",'measuredMm':45.01,'instrument':'MIC'"), shop,
                "fit.drive-end.shaft");
        assertEquals(Outcome.NO_LIMIT_SET, v.outcome());
        assertTrue(v.reason().contains(said), v.reason());
    }

    @Test
    void sizesOfADrawingGoBeforeTheZone() {
        Verdict v = shaft(45.016, ",'lowerMm':45.010,'upperMm':45.022,'instrument':'MIC','note':'drawing 4711'");
        assertEquals(Outcome.MEETS, v.outcome());
        assertEquals(10, v.bounds().lower(), 1e-9);
        assertTrue(v.source().contains("drawing 4711"), v.source());
    }

    /** AR100-2015, table 2-4: 0.050 mm at 48 mm. */
    @ParameterizedTest
    @CsvSource({"SHAFT_EXTENSION, 48, 0.030, MEETS", "SHAFT_EXTENSION, 48, 0.051, DOUBTFUL", "SHAFT_EXTENSION, 48, 0.060, FAILS",
        "BEARING_SEAT, 48, 0.060, NO_LIMIT_SET", "SHAFT_EXTENSION, 700, 0.060, NO_LIMIT_SET"})
    void runoutOfAShaftExtensionHasATableOtherPlacesHaveNone(String place, double diameter, double mm, Outcome outcome) {
        Job job = Bench.job("inspection", "{'schema':1,'runouts':[{'end':'DRIVE_END','place':'" + place + "','diameterMm':" + diameter
                + ",'runoutMm':" + mm + ",'instrument':'MIC','at':'2026-03-03T09:00:00Z'}]}");
        assertEquals(outcome, Bench.verdict(job, shop, "runout.drive-end." + place.toLowerCase().replace('_', '-')).outcome());
    }
}

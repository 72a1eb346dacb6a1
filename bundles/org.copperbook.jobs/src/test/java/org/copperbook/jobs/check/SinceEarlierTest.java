package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.SinceEarlier.Kind;
import org.copperbook.jobs.check.SinceEarlier.Row;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;

class SinceEarlierTest {

    private static Job earlier(String readings) {
        return Bench.job("run-up", "{'schema':1,'readings':[" + readings + "]}");
    }

    private static Job today(String readings) {
        return Bench.job("inspection", "{'schema':1,'readings':[" + readings + "]}");
    }

    private static String ohms(String state, String where, String observed, double celsius) {
        return "{'quantity':'RESISTANCE','place':{'winding':'exciter-stator'," + where + "},'observed':{" + observed
                + "},'windingCelsius':" + celsius + ",'state':'" + state + "','instrument':'bridge-1',"
                + "'at':'2026-03-16T10:00:00Z'}";
    }

    private static final String WHOLE = "'kind':'WHOLE','mark':'F1-F2'";

    private static String value(double ohm) {
        return "'kind':'VALUE','value':" + ohm;
    }

    private static Row only(SinceEarlier since) {
        assertEquals(1, since.rows().size(), since.rows().toString());
        return since.rows().get(0);
    }

    @Test
    void aWindingReadWarmerTodayIsTheSameAtOneTemperature() {
        // IEC 60034-1, 8.6.2.3, copper, k = 235: 30.00 ohm at 20 C is 30.00 x (235 + 35)/(235 + 20) = 31.7647 ohm at 35 C
        Row row = only(SinceEarlier.of(today(ohms("AS_FOUND", WHOLE, value(31.7647), 35)),
                earlier(ohms("AS_LEFT", WHOLE, value(30.00), 20)), Bench.shop()));
        assertEquals(WindingRole.EXCITER_STATOR, row.role());
        assertEquals(0, row.change(), 1e-5);
        assertFalse(row.moved());
        assertTrue(row.changeU() > 0 && row.changeU() < 0.05, "doubt " + row.changeU());
    }

    @Test
    void aTurnShortedSinceShowsAsMoreThanTheDoubt() {
        // a tenth of the conductor gone is a tenth of the resistance: R = rho l / A (IEC 60228, clause on dc resistance)
        Row row = only(SinceEarlier.of(today(ohms("AS_FOUND", WHOLE, value(0.9 * 31.7647), 35)),
                earlier(ohms("AS_LEFT", WHOLE, value(30.00), 20)), Bench.shop()));
        assertEquals(-0.10, row.change(), 1e-5);
        assertTrue(row.moved());
        assertTrue(row.changeInWords().contains("more than its doubt"), row.changeInWords());
    }

    @Test
    void anOpenWindingTodayIsSaidAsWhatTheMeterShowed() {
        Row row = only(SinceEarlier.of(today(ohms("AS_FOUND", WHOLE, "'kind':'ABOVE_RANGE'", 20)),
                earlier(ohms("AS_LEFT", WHOLE, value(30.00), 20)), Bench.shop()));
        assertEquals("above range", row.today());
        assertNull(row.change());
        assertTrue(row.moved());
        assertFalse(row.then().isBlank());
    }

    @Test
    void withoutAReadingTodayTheEarlierOneWaits() {
        Row row = only(SinceEarlier.of(today(""), earlier(ohms("AS_LEFT", WHOLE, value(30.00), 20)), Bench.shop()));
        assertEquals("", row.today());
        assertFalse(row.moved());
        assertEquals("", row.changeInWords());
    }

    @Test
    void theReadingAfterAssemblyCountsAndTheOneInProcessOnlyWithoutIt() {
        String process = ohms("IN_PROCESS", WHOLE, value(29.00), 20);
        String left = ohms("AS_LEFT", WHOLE, value(30.00), 20);
        Job found = today(ohms("AS_FOUND", WHOLE, value(30.00), 20));
        assertEquals(0, only(SinceEarlier.of(found, earlier(process + "," + left), Bench.shop())).change(), 1e-9);
        assertEquals(30.0 / 29 - 1, only(SinceEarlier.of(found, earlier(process), Bench.shop())).change(), 1e-9);
    }

    @Test
    void insulationStandsAt40DegreesOnBothSides() {
        // IEEE 43-2013, 6.3.1, equation 4, thermoplastic: halves for each 10 K; 800 Mohm at 20 C is 200 Mohm at 40 C
        String place = "{'quantity':'INSULATION_RESISTANCE','place':{'winding':'exciter-stator','kind':'TO_EARTH','mark':''},"
                + "'afterSeconds':60,'windingCelsius':20,'instrument':'ins-1',";
        String plate = "{'schema':1,'thermalClass':'A'}";
        Job then = Bench.with(earlier(place + "'observed':{'kind':'VALUE','value':8e8},'state':'AS_LEFT'}"), "nameplate", plate);
        Job now = Bench.with(today(place + "'observed':{'kind':'VALUE','value':4e6},'state':'AS_FOUND'}"), "nameplate", plate);
        Row row = only(SinceEarlier.of(now, then, Bench.shop()));
        assertEquals(Kind.INSULATION, row.kind());
        assertTrue(row.then().startsWith("200") && row.then().endsWith("M\u03a9"), row.then());
        assertTrue(row.today().startsWith("1") && row.today().endsWith("M\u03a9"), row.today());
    }

    @Test
    void whatWasChangedOnTheMachineIsNamedAndWhatOneRecordLeavesOutIsNot() {
        Job then = Bench.with(Bench.with(earlier(""), "nameplate", "{'schema':1,'serial':'A-1','voltageV':400}"),
                "winding/exciter-stator.as-wound", "{'schema':1,'role':'exciter-stator','asWound':true,'turnsPerCoil':120,'poles':8}");
        Job now = Bench.with(Bench.with(today(""), "nameplate", "{'schema':1,'serial':'A-1','voltageV':415,'frequencyHz':50}"),
                "winding/exciter-stator", "{'schema':1,'role':'exciter-stator','asWound':false,'turnsPerCoil':110}");
        List<String> changes = SinceEarlier.of(now, then, Bench.shop()).changes();
        assertEquals(2, changes.size(), changes.toString());
        assertTrue(changes.get(0).contains("400") && changes.get(0).contains("415"), changes.get(0));
        assertTrue(changes.get(1).contains("120") && changes.get(1).contains("110"), changes.get(1));
    }
}

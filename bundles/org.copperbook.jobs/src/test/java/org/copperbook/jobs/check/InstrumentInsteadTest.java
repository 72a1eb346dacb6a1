package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;

/** What to take instead of an instrument that cannot resolve a reading or is out of calibration. */
class InstrumentInsteadTest {

    private static final String METER = "{'id':'M','name':'Hand meter','kind':'MULTIMETER','fourWire':false,'leadOhm':0.15,"
            + "'calibrationDue':'%s','ranges':[{'quantity':'ohm','upTo':600,'resolution':0.1,'percentOfReading':0.9,'digits':2}]}";
    private static final String BRIDGE = "{'id':'B','name':'Bridge','kind':'RESISTANCE_BRIDGE','fourWire':true,"
            + "'calibrationDue':'%s','ranges':[{'quantity':'ohm','upTo':0.5,'resolution':0.0001,'percentOfReading':0.1,'digits':2}]}";

    private static Shop shop(String... instruments) {
        Shop shop = Bench.shop();
        shop = new Shop(shop.workshop(), new org.copperbook.jobs.shop.Instruments(1, java.util.List.of(), null), shop.stock(),
                shop.limits(), shop.people());
        for (String i : instruments) {
            shop = Bench.withInstrument(shop, i);
        }
        return shop;
    }

    private static Verdict on(Shop shop, String ohms, String instrument) {
        Job job = Bench.job("inspection", Bench.inspection(Bench.reading("r", "RESISTANCE", "exciter-rotor", "TERMINAL_PAIR",
                "U-V", ohms, "20", instrument, "AS_FOUND", "'method':'TWO_WIRE'")));
        return Bench.verdict(job, shop, "meter.inspection.r");
    }

    @Test
    void aTwoWireMeterOnAFifthOfAnOhmIsSentToTheBridgeOfTheRegister() {
        Verdict v = on(shop(METER.formatted("2030-01-01"), BRIDGE.formatted("2030-01-01")), "0.2", "M");
        assertEquals(Outcome.DOUBTFUL, v.outcome());
        assertTrue(v.reason().contains("cannot resolve"), v.reason());
        assertTrue(v.settle().contains("Bridge (B)"), v.settle());
    }

    @Test
    void aBridgeThatIsItselfOutOfCalibrationOrTooSmallIsNotNamed() {
        assertFalse(on(shop(METER.formatted("2030-01-01"), BRIDGE.formatted("2020-01-01")), "0.2", "M").settle().contains("(B)"));
        assertFalse(on(shop(METER.formatted("2020-01-01"), BRIDGE.formatted("2030-01-01")), "30", "M").settle().contains("(B)"));
    }

    @Test
    void anInstrumentOutOfCalibrationIsSaidWithOneThatIsNot() {
        Verdict v = on(shop(METER.formatted("2020-01-01"), BRIDGE.formatted("2030-01-01")), "0.2", "M");
        assertTrue(v.reason().contains("2020-01-01"), v.reason());
        assertTrue(v.settle().contains("Bridge (B)"), v.settle());
    }

    @Test
    void aNewerCertificateDoesNotMakeAnOldReadingGood() {
        // The reading is of 2026-03-03: after the first certificate ran out, before the second.
        String twice = METER.formatted("2030-01-01").replace("'ranges'", "'certificates':[{'date':'2024-02-01','due':'2025-02-01'},"
                + "{'date':'2026-06-01','due':'2027-06-01'}],'ranges'");
        Verdict v = on(shop(twice), "200", "M");
        assertEquals(Outcome.DOUBTFUL, v.outcome());
        assertTrue(v.reason().contains("2025-02-01"), v.reason());
        Verdict first = on(shop(twice.replace("{'date':'2024-02-01','due':'2025-02-01'},", "")), "200", "M");
        assertTrue(first.reason().contains("2026-06-01"), first.reason());
    }

    @Test
    void anInstrumentOutOfUseOrWithoutAnIdIsNotNamed() {
        String gone = BRIDGE.formatted("2030-01-01").replace("'fourWire'", "'outOfUse':true,'fourWire'");
        String nameless = BRIDGE.formatted("2030-01-01").replace("'id':'B',", "");
        Verdict v = on(shop(METER.formatted("2030-01-01"), gone, nameless), "0.2", "M");
        assertEquals(Outcome.DOUBTFUL, v.outcome());
        assertFalse(v.settle().contains("Bridge"), v.settle());
    }
}

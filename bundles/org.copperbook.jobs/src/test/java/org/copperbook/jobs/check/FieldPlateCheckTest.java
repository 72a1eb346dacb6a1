package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Copper by IEC 60034-1: R2 = R1 (235 + t2) / (235 + t1). A field of 20 ohm at 20 degrees has 25.1 ohm at 85 and 30.6 ohm at
 * 155 (class F); with a tenth either way plate values from 18 to 33.6 ohm are plausible.
 */
class FieldPlateCheckTest {

    private final Shop shop = Bench.withInstrument(Bench.shop(), "{'id':'BR','name':'Bridge','kind':'RESISTANCE_BRIDGE',"
            + "'fourWire':true,'calibrationDue':'2030-01-01','ranges':[{'quantity':'ohm','upTo':200,'resolution':0.001,"
            + "'percentOfReading':0.1,'digits':2}]}");

    private Verdict verdict(double volts, double amps, double ohms, String celsius) {
        Job job = Bench.job("nameplate", "{'schema':1,'thermalClass':'F','excitationV':" + volts + ",'excitationA':" + amps + "}",
                "inspection", Bench.inspection(Bench.reading("f", "RESISTANCE", "exciter-stator", "TERMINAL_PAIR", "F1-F2",
                        Double.toString(ohms), celsius, "BR", "AS_FOUND", "'method':'FOUR_WIRE'")));
        return Bench.verdict(job, shop, "plate.field.exciter-stator");
    }

    @ParameterizedTest
    @CsvSource({"50.2, 2, 20, 20, MEETS", "40.2, 2, 20, 20, MEETS", "61, 2, 20, 20, MEETS", "30, 2, 20, 20, DOUBTFUL",
        "80, 2, 20, 20, DOUBTFUL",
        // the same field read warm: 20 (235 + 60) / 255 = 23.14 ohm at 60 degrees
        "50.2, 2, 23.137, 60, MEETS", "80, 2, 23.137, 60, DOUBTFUL"})
    void theQuotientOfThePlateIsComparedWithTheFieldColdAndAtItsClass(double volts, double amps, double ohms, String celsius,
            Outcome outcome) {
        Verdict v = verdict(volts, amps, ohms, celsius);
        assertEquals(outcome, v.outcome(), v.reason());
        assertEquals(18, v.bounds().lower(), 0.01);
        assertEquals(33.65, v.bounds().upper(), 0.02);
    }

    @Test
    void aContradictionIsNamedAndNeverRefused() {
        Verdict low = verdict(30, 2, 20, "20");
        assertTrue(low.reason().startsWith("Contradiction") && low.reason().contains("cold"), low.reason());
        Verdict high = verdict(80, 2, 20, "20");
        assertTrue(high.reason().startsWith("Contradiction") && high.reason().contains("class"), high.reason());
        assertTrue(high.settle().contains("shorted turns"), high.settle());
    }

    @Test
    void theTemperatureThatThePlateImpliesIsSaid() {
        // 25.1 ohm over 20 at 20 degrees: 255 x 1.255 - 235 = 85
        assertTrue(verdict(50.2, 2, 20, "20").reason().contains("85 °C"), verdict(50.2, 2, 20, "20").reason());
    }

    @Test
    void withoutAReadingOfTheFieldNothingIsSaid() {
        Job job = Bench.job("nameplate", "{'schema':1,'excitationV':40,'excitationA':2}");
        assertTrue(JobChecks.verdicts(job, shop).stream().noneMatch(v -> v.id().startsWith("plate.field")));
    }
}

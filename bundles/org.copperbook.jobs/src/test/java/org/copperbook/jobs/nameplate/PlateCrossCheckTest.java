package org.copperbook.jobs.nameplate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Contradiction;
import org.copperbook.jobs.nameplate.PlateCrossCheck.What;
import org.junit.jupiter.api.Test;

/**
 * Plates of machines in textbooks agree with themselves; one figure misread is named with what the others give. The
 * motor's plate is invented, its efficiency follows from the definition: shaft power over the root of three times volts,
 * amps and power factor (any textbook on machines; memory). 1 hp is 745.7 W by definition.
 */
class PlateCrossCheckTest {

    /** Bakshi and Bakshi, Example 4.11: 8 poles, 50 Hz, 750 r/min, 1365.84 V line, 1537.7 kVA at 650 A. */
    private static final String EIGHT_POLES = "'phases':3,'poles':8,'frequencyHz':50,'speedRpm':750,'voltageV':1365.84,"
            + "'currentA':650,'apparentPowerVA':1537.7e3";

    /** Bakshi and Bakshi, Example 4.18: 600 kVA at 125 V in delta; reconnected in star 216.5 V and 1600 A. */
    private static final String DELTA = "'phases':3,'frequencyHz':50,'voltageV':125,'connection':'delta',"
            + "'apparentPowerVA':600e3";

    private static List<Contradiction> of(String fields) {
        try {
            PartJson json = new PartJson();
            PartKey key = PartKey.of(PartKind.NAMEPLATE);
            return new PlateCrossCheck().findings((Nameplate) json.read(key, (ObjectNode)
                    json.mapper().readTree(("{'schema':1," + fields + "}").replace('\'', '"'))));
        } catch (IOException | BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    private static void says(List<Contradiction> found, What what, int rating, double computed, double tolerance) {
        assertEquals(1, found.size(), found.toString());
        assertEquals(what, found.get(0).what());
        assertEquals(rating, found.get(0).rating());
        assertEquals(computed, ((Number) found.get(0).arguments().get(0)).doubleValue(), tolerance);
    }

    @Test
    void aPlateThatAgreesSaysNothing() {
        assertEquals(List.of(), of(EIGHT_POLES));
    }

    @Test
    void aMisreadCurrentShowsInTheApparentPower() {
        says(of(EIGHT_POLES.replace("'currentA':650", "'currentA':560")), What.APPARENT_POWER, 0, 1537.7 * 560 / 650, 0.1);
    }

    @Test
    void aMisreadPoleCountShowsInTheSpeed() {
        says(of(EIGHT_POLES.replace("'poles':8", "'poles':6")), What.SPEED, 0, 1000, 1e-9);
    }

    @Test
    void polesComeInPairs() {
        List<Contradiction> found = of(EIGHT_POLES.replace("'poles':8", "'poles':7"));
        assertEquals(What.ODD_POLES, found.get(0).what());
    }

    @Test
    void withoutPolesTheSpeedStillHasToFitSomeEvenNumber() {
        assertEquals(List.of(), of(EIGHT_POLES.replace("'poles':8,", "")));
        says(of(EIGHT_POLES.replace("'poles':8,", "").replace("'speedRpm':750", "'speedRpm':850")),
                What.NO_POLES, 0, 50, 1e-9);
    }

    @Test
    void starVoltsAfterDeltaAreTheRootOfThreeHigher() {
        assertEquals(List.of(), of(DELTA + ",'otherRatings':[{'connection':'star','frequencyHz':50,'voltageV':216.5,"
                + "'currentA':1600,'apparentPowerVA':600e3}]"));
        says(of(DELTA + ",'otherRatings':[{'connection':'star','frequencyHz':50,'voltageV':150}]"),
                What.RECONNECTED_VOLTS, 1, 216.506351, 1e-5);
    }

    @Test
    void aSecondFrequencyWantsTheSameVoltsPerHertz() {
        assertEquals(List.of(), of("'phases':3,'poles':4,'frequencyHz':50,'speedRpm':1500,'voltageV':400,"
                + "'apparentPowerVA':60e3,'otherRatings':[{'frequencyHz':60,'speedRpm':1800,'voltageV':480}]"));
        says(of("'frequencyHz':50,'voltageV':400,'otherRatings':[{'frequencyHz':60,'voltageV':240}]"),
                What.VOLTS_PER_HERTZ, 1, 8, 1e-9);
    }

    @Test
    void aMotorSlipsAndItsShaftGivesLessThanItTakes() {
        String motor = "'phases':3,'poles':4,'frequencyHz':50,'speedRpm':1455,'voltageV':400,'currentA':21.5,"
                + "'powerFactor':0.82,'powerW':11e3";
        assertEquals(List.of(), of(motor));
        List<Contradiction> found = of(motor.replace("'powerW':11e3", "'powerW':15e3"));
        says(found, What.EFFICIENCY, 0, 100 * 15e3 / (Math.sqrt(3) * 400 * 21.5 * 0.82), 1e-6);
    }

    @Test
    void aHorsepowerTypedAsKilowattsIsNoticed() {
        // 15 hp are 11.2 kW; written as 15 kW the motor would give more than it takes.
        assertEquals(What.EFFICIENCY, of("'phases':3,'voltageV':400,'currentA':21.5,'powerFactor':0.82,'powerW':15e3")
                .get(0).what());
    }

    @Test
    void powerAboveApparentPowerCannotBe() {
        says(of("'apparentPowerVA':50e3,'powerW':60e3"), What.POWER_FACTOR, 0, 1.2, 1e-9);
        says(of("'apparentPowerVA':50e3,'powerFactor':8"), What.POWER_FACTOR, 0, 8, 1e-9);
    }

    @Test
    void tooFewFiguresSayNothing() {
        assertEquals(List.of(), of("'maker':'x'"));
    }
}

package org.copperbook.jobs.nameplate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.check.PlateWords;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Contradiction;
import org.copperbook.jobs.nameplate.PlateCrossCheck.What;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        return of(fields, null);
    }

    private static List<Contradiction> of(String fields, MachineKind kind) {
        return new PlateCrossCheck().findings(plate(fields), kind);
    }

    private static Nameplate plate(String fields) {
        try {
            PartJson json = new PartJson();
            PartKey key = PartKey.of(PartKind.NAMEPLATE);
            return (Nameplate) json.read(key, (ObjectNode)
                    json.mapper().readTree(("{'schema':1," + fields + "}").replace('\'', '"')));
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

    @Test
    void withoutPhasesVoltsAndAmpsAreNotComparedAndThatIsSaid() {
        String plate = "'apparentPowerVA':100e3,'voltageV':400,'currentA':10";
        assertEquals(List.of(), of(plate, MachineKind.BRUSHLESS_ALTERNATOR));
        String said = String.join(" ", PlateWords.of(plate(plate), MachineKind.BRUSHLESS_ALTERNATOR));
        assertTrue(said.contains("Too few figures") && said.contains("phases"), said);
        // With star on the plate it has three phases, and root of three times 400 V and 10 A are 6.928 kVA.
        says(of(plate + ",'connection':'star'"), What.APPARENT_POWER, 0, 6.9282, 1e-4);
        says(of("'powerW':100e3,'voltageV':400,'currentA':10", MachineKind.INDUCTION_MOTOR_WOUND_ROTOR), What.EFFICIENCY, 0,
                100 * 100e3 / (Math.sqrt(3) * 400 * 10), 1e-6);
    }

    @Test
    void whatIsMissingToCompareIsNamedAndNothingWhenNothingWasBegun() {
        PlateCrossCheck check = new PlateCrossCheck();
        assertEquals(Set.of(PlateCrossCheck.Missing.AMPS), check.missing(plate("'phases':3,'powerW':5e3,'voltageV':400"), null, 0));
        assertEquals(Set.of(), check.missing(plate("'voltageV':400"), null, 0));
        assertEquals(Set.of(), check.missing(plate(EIGHT_POLES), null, 0));
        assertTrue(PlateWords.of(plate("'maker':'x'"), null).get(0).startsWith("Too few figures"));
        assertTrue(PlateWords.of(plate(EIGHT_POLES), null).get(0).contains("do not contradict"));
    }

    @Test
    void anAlternatorWithKilowattsOnlyDoesNotSlip() {
        String plate = "'phases':3,'poles':4,'frequencyHz':50,'speedRpm':1430,'powerW':40e3";
        assertEquals(List.of(), of(plate, MachineKind.INDUCTION_MOTOR_CAGE), "1430 r/min are a motor's at 4 poles and 50 Hz");
        says(of(plate, MachineKind.BRUSHLESS_ALTERNATOR), What.SPEED, 0, 1500, 1e-9);
    }

    @Test
    void anAlternatorsKilowattsAreVoltAmperesTimesPowerFactor() {
        String plate = "'phases':3,'voltageV':400,'currentA':100,'powerFactor':0.8,'powerW':";
        assertEquals(List.of(), of(plate + "55.4e3", MachineKind.BRUSHLESS_ALTERNATOR));
        says(of(plate + "45.4e3", MachineKind.BRUSHLESS_ALTERNATOR), What.POWER, 0, Math.sqrt(3) * 400 * 100 * 0.8 / 1000, 1e-9);
        assertEquals(List.of(), of(plate + "45.4e3", MachineKind.INDUCTION_MOTOR_CAGE), "at the shaft, of 82 %");
    }

    @Test
    void figuresThatNoMachineHasAreNamedAndNothingIsComputedFromThem() {
        List<Contradiction> found = of("'phases':3,'poles':0,'voltageV':-400,'frequencyHz':0,'speedRpm':0,'currentA':10,"
                + "'apparentPowerVA':1e12,'otherRatings':[{'voltageV':-480}]");
        assertEquals(List.of("NOT_ABOVE_ZERO POLES 0", "BEYOND_MACHINES 1000.0 0", "NOT_ABOVE_ZERO VOLTS 0",
                "NOT_ABOVE_ZERO HERTZ 0", "NOT_ABOVE_ZERO SPEED 0", "NOT_ABOVE_ZERO VOLTS 1"), found.stream().map(c -> c.what() + " "
                + c.arguments().get(0) + " " + c.rating()).toList());
        assertEquals(List.of(What.NOT_ABOVE_ZERO, What.POWER_FACTOR), of("'voltageV':-400,'powerFactor':1.7").stream()
                .map(Contradiction::what).toList());
        assertEquals("A voltage of -400 cannot be: read it again, or leave it out.",
                PlateWords.of(plate("'voltageV':-400"), null).get(0).replace('\u2212', '-'));
    }

    /** Classes of IEC 60085 as quoted publicly: Y 90, A 105, E 120, B 130, F 155, H 180, N 200, R 220, then 250. */
    @ParameterizedTest
    @ValueSource(strings = {"F", "h", "155", "155 (F)", "class F, rise B", "180(H)", "N", "R 220", "250", "275", "F/B", "F155", "155H"})
    void aThermalClassIsReadFromItsLetterOrItsTemperature(String stated) {
        assertEquals(List.of(), of("'thermalClass':'" + stated + "'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Z", "FF", "150", "banana", "?", "260"})
    void wordsThatNameNoThermalClassAreSaidAndKept(String stated) {
        List<Contradiction> found = of("'thermalClass':'" + stated + "'");
        assertEquals(List.of(new Contradiction(What.THERMAL_CLASS, 0, List.of(stated))), found);
        assertTrue(PlateWords.of(plate("'thermalClass':'" + stated + "'"), null).get(0).startsWith(stated + " is no thermal class"));
    }

    private static List<What> whats(String fields) {
        return of(fields).stream().map(Contradiction::what).toList();
    }

    @Test
    void aFigureThatCannotBeTakesOnlyTheComparisonsThatUseIt() {
        String sixPoles = EIGHT_POLES.replace("'poles':8", "'poles':6");
        assertEquals(List.of(What.NOT_ABOVE_ZERO, What.SPEED), whats(sixPoles.replace("'currentA':650", "'currentA':-12")));
        assertEquals(List.of(What.NOT_ABOVE_ZERO, What.APPARENT_POWER), whats(EIGHT_POLES.replace("'frequencyHz':50",
                "'frequencyHz':-50").replace("'currentA':650", "'currentA':560")));
        assertEquals(List.of(What.NOT_ABOVE_ZERO), whats(EIGHT_POLES.replace("'phases':3", "'phases':0")));
        // 60 V at 60 Hz against 400 V at 50 Hz in the same connection: 1 V/Hz and 8.
        assertEquals(List.of(What.NOT_ABOVE_ZERO, What.VOLTS_PER_HERTZ), whats("'frequencyHz':50,'voltageV':400,'currentA':-1,"
                + "'otherRatings':[{'frequencyHz':60,'voltageV':60}]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"excitationV", "excitationA", "mainFieldV", "mainFieldA", "rotorV", "rotorA", "overspeedRpm", "massKg",
        "shaftHeightMm", "inertiaKgM2"})
    void whatIsAboveZeroOnEveryMachineIsNamedWhereItIsNot(String field) {
        for (String value : List.of("0", "-3.5")) {
            String stated = "'" + field + "':" + value;
            assertEquals(List.of(What.NOT_ABOVE_ZERO), whats(stated));
            String said = PlateWords.of(plate(stated), null).get(0).replace('\u2212', '-');
            assertTrue(said.contains(" of " + value + " cannot be"), said);
        }
        assertEquals(List.of(), whats("'" + field + "':3.5"));
    }

    /** 40 V and 30 A are 1.2 kW: 12 % of 10 kVA, and 6 % of 20. */
    @Test
    void excitationThatTakesMuchOfTheRatingIsUnlikely() {
        says(of("'apparentPowerVA':10e3,'mainFieldV':40,'mainFieldA':30"), What.MAIN_FIELD_POWER, 0, 1.2, 1e-9);
        says(of("'apparentPowerVA':10e3,'excitationV':40,'excitationA':30"), What.EXCITER_POWER, 0, 1.2, 1e-9);
        assertEquals(List.of(), of("'apparentPowerVA':20e3,'mainFieldV':40,'mainFieldA':30"));
        assertEquals(List.of(), of("'mainFieldV':40,'mainFieldA':30"), "with no rating to compare with");
        String said = PlateWords.of(plate("'apparentPowerVA':10e3,'mainFieldV':40,'mainFieldA':30"), null).get(0);
        assertTrue(said.contains("1.2 kW, 12 % of the rating"), said);
    }

    /** An exciter field of 50 V and 1.5 A takes 75 W, a main field of 40 V and 27 A 1080 W. */
    @Test
    void anExciterFieldAndAMainFieldThatWereSwappedAreNoticed() {
        assertEquals(List.of(), of("'excitationV':50,'excitationA':1.5,'mainFieldV':40,'mainFieldA':27"));
        says(of("'excitationV':40,'excitationA':27,'mainFieldV':50,'mainFieldA':1.5"), What.EXCITER_ABOVE_MAIN_FIELD, 0, 1.08,
                1e-9);
    }

    @Test
    void anOverspeedBelowTheHighestRatedSpeedCannotBe() {
        String plate = "'speedRpm':1500,'otherRatings':[{'speedRpm':1800}],'overspeedRpm':";
        says(of(plate + "1650"), What.OVERSPEED, 0, 1650, 1e-9);
        assertEquals(List.of(), of(plate + "2160"));
    }

    @Test
    void aYearOfManufactureLiesBetweenTheFirstMachinesAndNextYear() {
        PlateCrossCheck in2026 = new PlateCrossCheck(Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC));
        for (int year : new int[] {1880, 1998, 2026, 2027}) {
            assertEquals(List.of(), in2026.findings(plate("'year':" + year), null));
        }
        for (int year : new int[] {1879, 2028, 2199}) {
            assertEquals(List.of(new Contradiction(What.YEAR, 0, List.of("" + year, "1880", "2027"))),
                    in2026.findings(plate("'year':" + year), null));
        }
        String said = PlateWords.of(plate("'year':2199"), null).get(0);
        assertTrue(said.startsWith("2199 cannot be the year"), said);
    }

    /** Types S1 to S10: IEC 60034-1, duty types (memory). */
    @ParameterizedTest
    @ValueSource(strings = {"S1", "s 1", "S2 60 min", "S3 40 %", "S3-40%", "S4-25% FI 2", "S9", "S10", "S1/S6", "continuous",
        "CONT.", "60 min", "40 % ED", "standby", "PRP", "\u8fde\u7eed"})
    void aDutyIsATypeWithWhateverFollowsOrTheWordsOfOlderPlates(String stated) {
        assertEquals(List.of(), of("'duty':'" + stated + "'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"S11", "S0", "S99", "S01", "banana", "S", "X1", "S1/S12", "?"})
    void wordsThatNameNoDutyAreSaidAndKept(String stated) {
        assertEquals(List.of(new Contradiction(What.DUTY, 0, List.of(stated))), of("'duty':'" + stated + "'"));
        assertTrue(PlateWords.of(plate("'duty':'" + stated + "'"), null).get(0).startsWith(stated + " names no duty"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"B", "80 K", "80", "80 K (P)", "class B"})
    void aRiseLimitIsAClassOrKelvin(String stated) {
        assertEquals(stated, plate("'riseLimit':'" + stated + "'").riseLimit());
        assertEquals(List.of(), of("'thermalClass':'F','riseLimit':'" + stated + "'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"banana", "-80 K", "0 K", "?"})
    void aRiseLimitThatIsNeitherIsSaidAndKept(String stated) {
        assertEquals(List.of(new Contradiction(What.RISE_LIMIT, 0, List.of(stated))), of("'riseLimit':'" + stated + "'"));
        assertTrue(PlateWords.of(plate("'riseLimit':'" + stated + "'"), null).get(0).contains("nor a rise in kelvin"));
    }

    @Test
    void theLowestAmbientLiesBelowTheRatedOne() {
        assertEquals(List.of(), of("'ambientCelsius':40,'minAmbientCelsius':-20"));
        assertEquals(List.of(), of("'minAmbientCelsius':-20"));
        says(of("'ambientCelsius':40,'minAmbientCelsius':45"), What.AMBIENT, 0, 45, 1e-9);
    }
}

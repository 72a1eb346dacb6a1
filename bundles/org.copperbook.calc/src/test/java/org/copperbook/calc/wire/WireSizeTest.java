package org.copperbook.calc.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireSizeTest {

    /** Printed AWG table, Lessons in Electric Circuits vol. V: inches, circular mils, lb/1000 ft. */
    @ParameterizedTest
    @CsvSource({"10,0.1019,10380,31.43", "12,0.08081,6530,19.77", "14,0.06408,4107,12.43", "16,0.05082,2583,7.818",
            "17,0.04526,2048,6.200", "18,0.04030,1624,4.917", "20,0.03196,1022,3.092", "21,0.02846,810.1,2.452",
            "22,0.02535,642.5,1.945"})
    void awgMatchesThePrintedTable(int gauge, double inch, double circularMils, double poundsPerThousandFeet) {
        WireSize size = WireSize.awg(gauge);
        assertEquals(inch, size.bareDiameter() / 0.0254, inch * 5e-4);
        assertEquals(circularMils, size.circularMils(), circularMils * 5e-4);
        assertEquals(poundsPerThousandFeet, size.kilogramsPerMetre() * 304.8 / 0.45359237,
                poundsPerThousandFeet * 1e-3);
    }

    /** NBS Handbook 100 (memory): ohm per 1000 ft at 20 C. */
    @ParameterizedTest
    @CsvSource({"10,0.9989", "20,10.15", "30,103.2"})
    void awgResistanceMatchesTheNationalBureauTable(int gauge, double ohmsPerThousandFeet) {
        assertEquals(ohmsPerThousandFeet, WireSize.awg(gauge).ohmsPerMetre() * 304.8, ohmsPerThousandFeet * 1e-3);
    }

    /**
     * BS 3737:1964 as listed in engineering-reference tables, mm. Also guards the copying error 27-30 = 0.406 ...
     * 0.254.
     */
    @ParameterizedTest
    @CsvSource({"0,8.230", "10,3.251", "11,2.946", "12,2.642", "13,2.337", "14,2.032", "15,1.829", "16,1.626",
            "17,1.422", "18,1.219",
            "20,0.914", "22,0.711", "23,0.610", "24,0.559", "26,0.457", "27,0.417", "28,0.376", "29,0.345", "30,0.315",
            "36,0.193",
            "40,0.122"})
    void swgMatchesTheStandardTable(int gauge, double millimetres) {
        assertEquals(millimetres, WireSize.swg(gauge).bareDiameter() * 1e3, 0.0005 + 1e-9);
    }

    /** Open dataset OpenMagnetics MAS, standard IEC 60317: largest overall diameters in mm. */
    @ParameterizedTest
    @CsvSource({"0.315,0.349,0.367", "0.4,0.439,0.459", "0.5,0.544,0.566", "0.63,0.679,0.704", "0.8,0.855,0.884",
            "1,1.062,1.094",
            "1.25,1.316,1.349", "1.4,1.468,1.502", "1.6,1.670,1.706", "1.8,1.872,1.909", "2,2.074,2.112"})
    void enamelMatchesTheOpenDataset(double bare, double gradeOne, double gradeTwo) {
        WireSize size = WireSize.metric(bare);
        assertEquals(gradeOne, size.overallDiameter(InsulationGrade.GRADE_1).maximum() * 1e3, 1e-9);
        assertEquals(gradeTwo, size.overallDiameter(InsulationGrade.GRADE_2).maximum() * 1e3, 1e-9);
    }

    /** NEMA MW 1000 heavy build in the open dataset OpenMagnetics MAS: half sizes lie between the metric rows. */
    @ParameterizedTest
    @CsvSource({"12.5,1.938,2.022", "14.5,1.537,1.621", "10.5,2.443,2.530"})
    void halfSizesAreInterpolatedAndSaySo(double gauge, double bare, double heavyNominal) {
        WireSize size = WireSize.awg(gauge);
        assertEquals(bare, size.bareDiameter() * 1e3, 0.002);
        OverallDiameter overall = size.overallDiameter(InsulationGrade.GRADE_2);
        assertEquals(heavyNominal, overall.middle() * 1e3, 0.025);
        assertTrue(overall.source().contains("interpolated"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"18SWG|1.2192", "AWG 16|1.29084591", "1.25mm|1.25", "1,25 mm|1.25",
            "#16 awg|1.29084591",
            "4/0 AWG|11.684", "0000AWG|11.684", "swg 7/0|12.7", "0.05in|1.27", "50 mil|1.27", ".5mm|0.5"})
    void readsWhatPeopleWrite(String text, double millimetres) {
        assertEquals(millimetres, WireSize.parse(text).bareDiameter() * 1e3, 2e-5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "18", "1.25", "SWG", "99 SWG", "AWG 51", "abc", "-1mm", "16.5SWG", "0mm", "50mm"})
    void refusesWhatMayMeanTwoThings(String text) {
        assertThrows(OutOfRange.class, () -> WireSize.parse(text));
    }

    @ParameterizedTest
    @CsvSource({"18SWG,SWG 18", "AWG 4/0,AWG 4/0", "1.25mm,1.25 mm", "1.0mm,1.00 mm", "0.355mm,0.355 mm",
            "2mm,2.00 mm"})
    void namesTheSizeAsTheTradeDoes(String text, String label) {
        assertEquals(label, WireSize.parse(text).label());
    }

    @Test
    void labelReadsBack() {
        for (int n = -3; n <= 50; n++) {
            assertEquals(WireSize.awg(n), WireSize.parse(WireSize.awg(n).label()));
        }
        for (int n = -6; n <= 50; n++) {
            assertEquals(WireSize.swg(n), WireSize.parse(WireSize.swg(n).label()));
        }
    }

    /** ASTM B258 definition: six steps change the diameter by 92^(6/39). */
    @Test
    void sixGaugesChangeTheDiameterByTheDefinedRatio() {
        assertEquals(2.00503152, WireSize.awg(10).bareDiameter() / WireSize.awg(16).bareDiameter(), 1e-8);
        assertEquals(10.164141, WireSize.awg(10).area() / WireSize.awg(20).area(), 1e-6);
    }

    @Test
    void roundedCornersTakeFromTheStrip() {
        assertEquals(10e-6 - (4 - Math.PI) * 0.25e-6, new Strip(5e-3, 2e-3, 0.5e-3).area(), 1e-15);
        assertThrows(OutOfRange.class, () -> new Strip(2e-3, 5e-3, 0));
        assertThrows(OutOfRange.class, () -> new Strip(5e-3, 2e-3, 1.1e-3));
    }
}

package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindingFiguresTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    private final Shop shop = Bench.shop();

    /**
     * Theraja, A Textbook of Electrical Technology, ch. 37, alternator with 16 poles, 144 slots, 10 conductors per slot,
     * full pitch, star, 0.03 Wb per pole, 50 Hz: 0.96 distribution factor, 1534 V per phase, 2658 V between lines (memory).
     * Over a bore of 1 m and a length of 0.3 m those 0.03 Wb are 0.8 T by B = Phi p/(D L).
     */
    @Test
    void fluxDensityOfATextbookAlternator() {
        Job job = alternator("'boreM':1.0,'coreLengthM':0.3", "'voltageV':2658,'frequencyHz':50,'currentA':100");
        assertEquals(0.96, figure(job, "factor").value(), 0.0005);
        Verdict gap = figure(job, "gap");
        assertEquals(0.8, gap.value(), 0.8 * 0.003);
        assertTrue(gap.reason().contains("mWb"), gap.reason());
        assertEquals("T", gap.unit());
        assertTrue(gap.source().contains("Pyrhonen"), gap.source());
        assertEquals(Outcome.DOUBTFUL, gap.outcome());
        assertTrue(gap.reason().contains("below the usual range"), gap.reason());
    }

    /** Definition: amps of one circuit over its copper, 100 A through 2 strands of 4 mm diameter, 25.13 mm2. */
    @Test
    void currentDensityIsAmpsOverArea() {
        Verdict v = figure(alternator("'boreM':1.0", "'currentA':100"), "density");
        assertEquals(100 / (2 * Math.PI / 4 * 16), v.value(), 1e-9);
        assertEquals("A/mm\u00b2", v.unit());
    }

    /** Two circuits carry half each; the line current of a delta is root three times that of a phase. */
    @Test
    void circuitsAndDeltaDivideTheCurrent() {
        Job job = alternator("'boreM':1.0", "'currentA':100");
        String part = text(job).replace("\"circuits\":1", "\"circuits\":2").replace("\"STAR\"", "\"DELTA\"");
        Verdict v = figure(Bench.with(job, STATOR.toString(), part), "density");
        assertEquals(100 / Math.sqrt(3) / 2 / (2 * Math.PI / 4 * 16), v.value(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"gap, bore", "gap, rated volts", "tooth, tooth width", "yoke, yoke depth", "density, rated current",
            "fill, slot depth", "resistance, resistance readings", "copper, mean turn"})
    void whatCannotBeComputedSaysWhatIsMissing(String what, String missing) {
        String core = missing.equals("bore") ? "" : "'boreM':1.0,";
        String plate = missing.equals("rated volts") ? "'frequencyHz':50"
                : missing.equals("rated current") ? "'voltageV':2658,'frequencyHz':50"
                        : "'voltageV':2658,'frequencyHz':50,'currentA':100";
        Verdict v = figure(alternator(core + "'coreLengthM':0.3", plate), what);
        assertEquals(Outcome.NOT_MEASURED, v.outcome());
        assertNull(v.value());
        assertTrue(v.reason().contains(missing), v.reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"main-stator", "main-rotor", "exciter-stator", "exciter-rotor", "pilot-stator", "motor-stator",
            "motor-rotor"})
    void anEmptyRecordOfEveryWindingIsNeverSilent(String role) {
        Job job = Bench.job("winding/" + role, "{'schema':1,'role':'" + role + "','asWound':false}");
        List<Verdict> figures = WindingFigures.of(job, shop, PartKey.parse("winding/" + role));
        assertTrue(figures.size() >= 3, figures::toString);
        figures.forEach(v -> {
            assertEquals(Outcome.NOT_MEASURED, v.outcome(), v::toString);
            assertTrue(v.reason().contains("missing"), v.reason());
        });
    }

    /** A trapezium of 20 mm depth, 8 and 12 mm wide holds 200 mm2; ten wires measured 4 mm covered take 160 mm2. */
    @Test
    void slotFillIsSquaresOverTheSlotAsMeasured() {
        Job job = alternator("'slotDepthM':0.02,'slotWidthTopM':0.008,'slotWidthBottomM':0.012", "'currentA':1");
        String part = text(job).replace("\"strands\":2", "\"strands\":1,\"coveredMm\":4");
        Verdict v = figure(Bench.with(job, STATOR.toString(), part), "fill");
        assertEquals(0.8, v.value(), 1e-9);
        assertEquals(Outcome.DOUBTFUL, v.outcome());
    }

    /** Ohm's law with 1/58 ohm mm2/m at 20 C (IEC 60028) and a slip planted: one coil of group 4 lost a turn. */
    @Test
    void aPlantedTurnSlipIsNamedWithItsProbability() {
        Job job = Bench.with(read(4, 0), "nameplate", "{'schema':1}");
        Verdict match = Bench.verdict(job, shop, "main-stator.capture.match");
        assertEquals(Outcome.DOUBTFUL, match.outcome(), match.reason());
        assertTrue(match.reason().contains("one coil of group 4 had one turn fewer than counted"), match.reason());
        assertTrue(match.reason().matches("(?s).*with a probability of \\d+ %.*"), match.reason());
        assertTrue(match.value() < 0.4);
        assertNull(match.point());
        assertEquals(Outcome.DOUBTFUL, figure(job, "resistance.group-4").outcome());
        assertEquals(Outcome.MEETS, figure(job, "resistance.group-5").outcome());
    }

    @Test
    void aCleanCaptureMeets() {
        Verdict match = Bench.verdict(read(0, 0), shop, "main-stator.capture.match");
        assertEquals(Outcome.MEETS, match.outcome(), match.reason());
        assertTrue(match.value() > 0.9, match.reason());
    }

    /** Read at 60 C what was read at 20 C: the copper is (235 + 60)/(235 + 20) as high (IEC 60034-1), and it still fits. */
    @Test
    void aWarmReadingWithItsTemperatureStillFits() {
        assertEquals(Outcome.MEETS, Bench.verdict(read(0, 40), shop, "main-stator.capture.match").outcome());
    }

    @Test
    void figuresAreTheSameWhateverTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertTrue(figure(alternator("'boreM':1.0,'coreLengthM':0.3", "'voltageV':2658,'frequencyHz':50"), "factor")
                    .reason().contains("0,9"));
        } finally {
            Locale.setDefault(before);
        }
    }

    private Verdict figure(Job job, String what) {
        List<Verdict> all = WindingFigures.of(job, shop, STATOR);
        return all.stream().filter(v -> v.id().equals("main-stator.figure." + what)).findFirst()
                .orElseThrow(() -> new AssertionError(what + " not among " + all));
    }

    private static String text(Job job) {
        return Bench.JSON.tree(job.part(STATOR).orElseThrow()).toString();
    }

    /** 144 slots, 16 poles, full pitch 1-10, groups of three, one coil side of five turns in each of two layers. */
    private static Job alternator(String core, String plate) {
        return Bench.job("nameplate", "{'schema':1," + plate + "}", STATOR.toString(),
                winding(144, 16, 3, 9, 5, "'wire':[{'size':'4 mm','strands':2}]," + core, 0, 0, 0, 0));
    }

    /** 36 slots, 4 poles, 5 turns of one 1 mm wire, 0.5 m mean turn, read at 20 C or warmer by some kelvin. */
    private static Job read(int shortGroup, double warmer) {
        return Bench.job(STATOR.toString(), winding(36, 4, 3, 8, 5,
                "'meanTurnM':0.5,'wire':[{'size':'1 mm','strands':1}]", 0.5, Math.PI / 4, shortGroup, warmer));
    }

    private static String winding(int slots, int poles, int perGroup, int span, int turns, String more, double meanTurn,
            double mm2, int shortGroup, double warmer) {
        List<String> groups = new ArrayList<>();
        String[] phases = {"U", "W", "V"};
        int count = slots / perGroup;
        for (int g = 0; g < count; g++) {
            List<String> coils = new ArrayList<>();
            for (int c = 0; c < perGroup; c++) {
                int go = g * perGroup + c + 1;
                coils.add("{'goSlot':" + go + ",'returnSlot':" + ((go + span - 1) % slots + 1) + ",'turns':" + turns + "}");
            }
            int turnsThere = perGroup * turns - (shortGroup == g + 1 ? 1 : 0);
            double ohms = meanTurn == 0 ? 0 : turnsThere * meanTurn / 58 / mm2 * (235 + 20 + warmer) / (235 + 20);
            String read = ohms == 0 ? "" : ",'resistance':" + Bench.reading("g" + g, "RESISTANCE", "main-stator",
                    "COIL_GROUP", String.valueOf(g + 1), String.valueOf(ohms), String.valueOf(20 + warmer), "bridge-1",
                    "AS_FOUND", "'method':'FOUR_WIRE'");
            groups.add("{'number':" + (g + 1) + ",'phase':'" + phases[g % 3] + "','reversed':" + (g % 2 == 1)
                    + ",'coils':[" + String.join(",", coils) + "]" + read + "}");
        }
        return "{'schema':1,'role':'main-stator','asWound':false,'slots':" + slots + ",'poles':" + poles
                + ",'phases':3,'layers':2,'circuits':1,'connection':'STAR'" + (more.isEmpty() ? "" : "," + more)
                + ",'groups':[" + String.join(",", groups) + "]}";
    }
}

package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.calc.catalogue.Evaluation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Calculations of wire, windings and faults that no published case runs through, called by name as the command line
 * does.
 */
class NamedWindingCalculationsTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();

    private static Evaluation run(String name, String inputs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String part : inputs.split(" \\| ")) {
            int eq = part.indexOf('=');
            map.put(part.substring(0, eq), part.substring(eq + 1));
        }
        return CATALOGUE.evaluate(name, map);
    }

    /** Tables of BS 3737 (SWG 21 is 0.8128 mm) and ASTM B258 (AWG 20 is 0.8118 mm). */
    @Test
    void gaugingSaysWhenTwoSizesFit() {
        Evaluation found = run("wire-gauging", "diameter=0.8123mm | expanded=2e-6m");
        assertEquals("yes", found.word("ambiguous"));
        assertTrue(found.word("fitting").contains("SWG 21") && found.word("fitting").contains("AWG 20"));
        assertEquals(1, found.warnings().size());
    }

    /** Geometry: 4 x 1.00 mm have the area of 1 x 2.00 mm; ANSI/EASA AR100 wants no less than the original. */
    @Test
    void substitutionUsesTheShelf() {
        Evaluation found = run("wire-substitution", "original=1 x 2.0mm | stock=1.0mm=20; 1.4mm=20 | strands=6");
        assertEquals("4 x 1.00 mm", found.word("best"));
        assertEquals(0, found.number("area-error"), 1e-12);
        Evaluation none = run("wire-substitution", "original=1 x 2.0mm | stock=1.4mm=20 | strands=6");
        assertEquals("none", none.word("best"));
        assertThrows(OutOfRange.class, () -> run("wire-substitution", "original=1 x 2.0mm | stock=1.0mm"));
        Evaluation tight = run("wire-substitution", "original=1 x 2.0mm | stock=1.0mm=20 | strands=6 | fill-margin=2%");
        assertEquals("none", tight.word("best"));
    }

    /**
     * Distribution factors 0.9598 and 0.2176 of q = 3 (Nagrath and Kothari Ex. 5.1): the fifth is 0.2176/0.9598/5 and
     * runs back.
     */
    @Test
    void fifthHarmonicOfTheMagnetomotiveForceRunsBack() {
        Evaluation found = run("mmf-harmonic", "slots=36 | poles=4 | span=9 | pole-pairs=10");
        assertEquals(0.2176 / 0.9598 / 5, found.number("backward"), 2e-5);
        assertEquals(0, found.number("forward"), 1e-12);
    }

    /**
     * Tarlok Singh, Electrical Machines-2, Ex. 1.1, written down coil by coil; and the same with one coil turned round.
     */
    @Test
    void capturedCoilsShowAReversedCoil() {
        String rest = " | v=5-10x8, -11-16x8, 17-22x8, -23-4x8 | w=-3-8x8, 9-14x8, -15-20x8, 21-2x8 | layers=1 | slots=24 | poles=4";
        Evaluation sound = run("captured-coils", "u=1-6x8, -7-12x8, 13-18x8, -19-24x8" + rest);
        assertEquals(0.9659, sound.number("kw-u"), 5e-5);
        assertEquals("none", sound.word("findings"));
        assertTrue(sound.warnings().isEmpty());
        Evaluation reversed = run("captured-coils", "u=1-6x8, 7-12x8, 13-18x8, -19-24x8" + rest);
        assertEquals(0.9659 / 2, reversed.number("kw-u"), 5e-5);
        assertEquals(1, reversed.warnings().size());
        assertThrows(OutOfRange.class, () -> run("captured-coils", "u=1 to 6" + rest));
    }

    /** McPherson, ch. 3 Ex. 1-3 turned round: 2 turns a coil, span 5, 0.96 T. */
    @Test
    void bareCoreFindsTheWindingOfTheBook() {
        Evaluation found = run("bare-core",
                "slots=36 | poles=6 | bore=300mm | length=250mm | iron-length=237.5mm | tooth-width=13mm"
                + " | yoke-depth=45mm | slot-area=160mm2 | line-volts=206.772V | rating=20kVA | b=0.96T | thickest=1.4mm");
        assertEquals(2, found.number("turns"));
        assertEquals(5, found.number("span"));
        assertEquals(0.96, found.number("gap"), 0.002);
    }

    /** Continuity of flux: 0.024 Wb over six poles of 0.30 x 0.25 m is 0.96 T (McPherson, ch. 3). */
    @Test
    void fluxDensitiesFollowTheFlux() {
        Evaluation found = run("flux-densities", "slots=36 | poles=6 | bore=300mm | length=250mm | iron-length=237.5mm"
                + " | tooth-width=13mm | yoke-depth=45mm | slot-area=160mm2 | flux=0.024Wb");
        assertEquals(0.96, found.number("gap"), 1e-9);
        assertEquals(0.012 / (0.045 * 0.2375), found.number("yoke"), 1e-9);
    }

    /** Induced voltage: from 50 to 60 Hz at the same volts, five sixths of the turns (common practice of rewinding). */
    @Test
    void redesignForSixtyHertz() {
        Evaluation found = run("redesign",
                "line-volts=400 | circuits=2 | coils-per-phase=16 | turns=12 | kw=0.925 | area=8mm2"
                + " | line-current=90 | new-f=60 | new-line-volts=400 | new-circuits=2 | new-kw=0.925");
        assertEquals(10, found.number("new-turns"));
        assertEquals(9.6e-6, found.number("new-area"), 1e-12);
        assertTrue(found.warnings().size() >= 2);
    }

    @Test
    void captureCheckSpeaksInASentence() {
        double turn = 0.7 * 1.7241e-8 / (3 * Math.PI / 4 * 1e-6) * 257 / 255;
        StringBuilder groups = new StringBuilder();
        for (int group = 1; group <= 12; group++) {
            groups.append(group > 1 ? ";" : "").append(turn * (group == 5 ? 17 : 18));
        }
        Evaluation found = run("capture-check",
                "slots=36 | poles=4 | span=8 | turns=6 | strands=3x1.0mm | circuits=2 | mean-turn=0.7m"
                + " | temperature=22C | groups=" + groups);
        assertEquals("yes", found.word("questioned"));
        assertTrue(found.word("first").contains("group 5"), found.word("first"));
        assertTrue(found.word("sentence").contains("surge"), found.word("sentence"));
    }

    /** Arithmetic: 20 kg and 8 percent at 14.35 are 21.6 kg and 309.96. */
    @Test
    void copperIsPriced() {
        Evaluation found = run("copper-cost", "mass=20kg | price=14.35");
        assertEquals(21.6, found.number("order"), 1e-12);
        assertEquals(309.96, found.number("cost"), 1e-9);
    }

    /** Pyrhonen, Jokinen and Hrabovcova (memory): salient-pole gap density 0.85 to 1.05 T. */
    @Test
    void usualRangesNameTheirOrigin() {
        Evaluation found = run("usual-range", "quantity=gap");
        assertEquals(0.85, found.number("low"));
        assertTrue(found.word("origin").contains("memory"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"6 x AWG 15|6|9.9014", "2x1.0mm + 1x0.9mm|3|2.20697", "1.25mm|1|1.22718",
        "1 x strip 6,83x4,14mm|1|28.2762", "2\u00d7strip 4x2mm r0.5mm|2|15.5708"})
    void bundlesAreReadAsWritten(String text, int strands, double squareMillimetres) {
        ConductorBundle bundle = BundleText.read(text, org.copperbook.calc.wire.ConductorMaterial.COPPER);
        assertEquals(strands, bundle.count());
        assertEquals(squareMillimetres, bundle.area() * 1e6, 1e-4);
    }
}

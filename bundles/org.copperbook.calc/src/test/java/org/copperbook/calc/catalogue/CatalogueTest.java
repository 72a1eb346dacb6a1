package org.copperbook.calc.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.DecimalMark;
import org.junit.jupiter.api.Test;

/** The catalogue as people use it. */
class CatalogueTest {

    private static final Catalogue CATALOGUE = Catalogue.standard();

    @Test
    void everyEntrySaysWhatItIsAndWhereItComesFrom() {
        for (Calculation c : CATALOGUE.all()) {
            assertTrue(c.name().matches("[a-z0-9]+(-[a-z0-9]+)*"), c.name());
            assertFalse(c.title().isBlank(), c.name() + " has no title");
            assertFalse(c.source().isBlank(), c.name() + " has no source");
            assertFalse(c.formula().isBlank(), c.name() + " has no formula");
            assertFalse(c.source().contains("http"), c.name() + " cites an address");
            assertFalse(c.outputs().isEmpty(), c.name() + " gives nothing");
            Set<String> names = new HashSet<>();
            c.inputs().forEach(i -> assertTrue(names.add(i.name()) && !i.doc().isBlank(), c.name() + " " + i.name()));
            names.clear();
            c.outputs().forEach(o -> assertTrue(names.add(o.name()) && !o.doc().isBlank(), c.name() + " " + o.name()));
        }
    }

    /** IEC 60034-1, 8.6.2.3: (235 + 75)/(235 + 20). */
    @Test
    void unitsAreReadFromTheText() {
        Evaluation e = CATALOGUE.evaluate("resistance-at-temperature", Map.of("r", "0.42ohm", "t", "20C", "to", "167F"));
        assertEquals(0.42 * 310 / 255, e.number("r-to"), 1e-12);
        assertEquals("0.5106 Ω", e.text("r-to", 4, DecimalMark.DOT));
        assertEquals("0,5106 Ω", e.text("r-to", 4, DecimalMark.COMMA));
    }

    @Test
    void bareNumberTakesTheUnitOfTheInput() {
        assertEquals(CATALOGUE.evaluate("insulation-to-40", Map.of("r", "100", "t", "30")).number("r40"),
                CATALOGUE.evaluate("insulation-to-40", Map.of("r", "100 Mohm", "t", "86 F")).number("r40"), 1e-3);
    }

    @Test
    void problemsNameTheInput() {
        assertProblem(InputProblem.Kind.UNKNOWN_CALCULATION, "no-such", Map.of());
        assertProblem(InputProblem.Kind.MISSING, "temperature-factor", Map.of("from", "20"));
        assertProblem(InputProblem.Kind.UNKNOWN_INPUT, "temperature-factor", Map.of("from", "20", "to", "75", "x", "1"));
        assertProblem(InputProblem.Kind.NOT_READABLE, "temperature-factor", Map.of("from", "20 kg", "to", "75"));
        assertProblem(InputProblem.Kind.NOT_READABLE, "temperature-factor",
                Map.of("from", "20", "to", "75", "conductor", "gold"));
        assertProblem(InputProblem.Kind.AMBIGUOUS, "withstand-iec", Map.of("u", "1,234"));
        assertProblem(InputProblem.Kind.MISSING, "conductor-resistance", Map.of("length", "1 m"));
    }

    private static void assertProblem(InputProblem.Kind kind, String name, Map<String, String> inputs) {
        InputProblem p = assertThrows(InputProblem.class, () -> CATALOGUE.evaluate(name, inputs));
        assertEquals(kind, p.kind(), p.getMessage());
        assertFalse(p.input().isEmpty());
    }

    @Test
    void refusalComesThroughWithItsReason() {
        OutOfRange refusal = assertThrows(OutOfRange.class,
                () -> CATALOGUE.evaluate("temperature-factor", Map.of("from", "20", "to", "900")));
        assertTrue(refusal.getMessage().contains("900"));
    }

    @Test
    void aboveRangeIsAFindingNotAnError() {
        Evaluation e = CATALOGUE.evaluate("phase-values",
                Map.of("connection", "delta", "uv", "0.8", "vw", "OL", "wu", "above range"));
        assertEquals("open-line", e.word("finding"));
        assertEquals("W", e.word("where"));
    }

    @Test
    void twoEntriesOfOneNameAreRefused() {
        CalculationSource twice = () -> List.of(CATALOGUE.find("slip").orElseThrow(),
                CATALOGUE.find("slip").orElseThrow());
        assertThrows(IllegalStateException.class, () -> new Catalogue(List.of(twice)));
    }

    @Test
    void areasKeepEveryEntry() {
        assertEquals(CATALOGUE.all().size(), CATALOGUE.byArea().values().stream().mapToInt(List::size).sum());
    }
}

package org.copperbook.calc.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.calc.catalogue.Evaluation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published and independently recomputed values, run through the catalogue by name. Each row of the files names its source
 * and how certain it is: seen in the text named, seen second hand, from memory of the text, derived by arithmetic or a circuit
 * identity, or synthetic inputs.
 */
class ReferenceCasesTest {

    private static final List<String> AREAS = List.of("resistance", "insulation", "fits", "withstand", "surge", "rectifier",
            "core", "run-up", "copper", "wire", "winding", "copper-winding", "examples-winding",
            "examples-generator", "examples-insulation", "examples-resistance",
            "examples-rectifier", "examples-core", "examples-unbalance", "examples-limits", "examples-uncertainty",
            "examples-practice");

    private static final Set<String> CERTAINTIES = Set.of("seen", "seen second hand", "memory", "derived", "synthetic",
            "own");

    private static final Catalogue CATALOGUE = Catalogue.standard();

    static Stream<ReferenceRow> rows() {
        return AREAS.stream().flatMap(a -> ReferenceRow.of(a).stream());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void referenceHolds(ReferenceRow row) {
        assertTrue(CATALOGUE.find(row.calculation()).isPresent(), "no calculation " + row.calculation());
        if (row.marks().contains("refused")) {
            OutOfRange refusal = assertThrows(OutOfRange.class,
                    () -> CATALOGUE.evaluate(row.calculation(), row.inputs()));
            assertFalse(refusal.getMessage().isBlank());
            return;
        }
        Evaluation found = CATALOGUE.evaluate(row.calculation(), row.inputs());
        for (Expectation e : row.expected()) {
            assertNull(e.difference(found), row.id());
        }
        for (Expectation e : row.printed()) {
            assertNull(e.difference(found), row.id() + " as printed");
        }
        for (Expectation e : row.misprinted()) {
            assertNotNull(e.difference(found), row.id() + " must not repeat the misprint " + e.text());
        }
        assertEquals(row.marks().contains("warns"), !found.warnings().isEmpty() && row.marks().contains("warns"),
                row.id() + " must warn");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowExpectsSomethingAndNamesItsSource(ReferenceRow row) {
        assertFalse(row.expected().isEmpty() && row.marks().isEmpty(), row.id() + " expects nothing");
        assertFalse(row.source().isBlank(), row.id() + " names no source");
        assertFalse(row.source().contains("http") || row.source().contains("www."), row.id() + " cites an address");
        assertTrue(CERTAINTIES.contains(row.certainty()), row.id() + " certainty " + row.certainty());
    }

    @Test
    void countsByAreaAndCertaintyAreComplete() {
        Map<String, Map<String, Integer>> cases = new TreeMap<>();
        Map<String, Integer> numbers = new TreeMap<>();
        for (String area : AREAS) {
            List<ReferenceRow> rows = ReferenceRow.of(area);
            Map<String, String> certaintyOfCase = rows.stream().collect(Collectors.toMap(ReferenceRow::id,
                    ReferenceRow::certainty, (a, b) -> a, TreeMap::new));
            certaintyOfCase.values().forEach(c -> cases.computeIfAbsent(area, a -> new TreeMap<>())
                    .merge(c, 1, Integer::sum));
            numbers.put(area, rows.stream().mapToInt(ReferenceRow::numbers).sum());
        }
        Map<Boolean, Long> collections = cases(AREAS);
        assertEquals(204, collections.get(true), "cases of the first collection");
        assertTrue(numbers.values().stream().mapToInt(Integer::intValue).sum() >= 692, "numbers " + numbers);
        cases.forEach((area, byCertainty) -> System.out.println("reference " + area + ": " + byCertainty + " cases, "
                + numbers.get(area) + " numbers"));
    }

    /** Distinct cases; true for those of the first collection, whose marks are two letters and two digits. */
    private static Map<Boolean, Long> cases(List<String> areas) {
        return areas.stream().flatMap(a -> ReferenceRow.of(a).stream()).map(ReferenceRow::id).distinct()
                .collect(Collectors.partitioningBy(id -> id.matches("(RT|IR|HP|SG|WR|WT|RB|CL|RU|CU)-\\d\\d"),
                        Collectors.counting()));
    }

    /** Searches and rankings have no single published number; their own tests stand behind them. */
    private static final Set<String> RANKED = Set.of("bare-core", "capture-check");

    /** No entry of the catalogue goes unchecked. */
    @Test
    void everyCalculationIsBehindARow() {
        Set<String> checked = rows().map(ReferenceRow::calculation).collect(Collectors.toSet());
        List<String> unchecked = CATALOGUE.all().stream().map(Calculation::name)
                .filter(n -> !checked.contains(n) && !RANKED.contains(n)).toList();
        assertEquals(List.of(), unchecked);
    }
}

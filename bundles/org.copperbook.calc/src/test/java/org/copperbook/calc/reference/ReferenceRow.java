package org.copperbook.calc.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** One evaluation of a published case. A case may need several. */
record ReferenceRow(String area, String id, String quantity, String calculation, Map<String, String> inputs,
        List<Expectation> expected, Set<String> marks, List<Expectation> printed, List<Expectation> misprinted,
        String source, String certainty) {

    static List<ReferenceRow> of(String area) {
        List<ReferenceRow> rows = new ArrayList<>();
        for (Map<String, String> row : CsvRows.read("/reference/" + area + ".csv")) {
            rows.add(new ReferenceRow(area, row.get("case"), row.get("quantity"), row.get("calculation"),
                    inputs(row.get("inputs")), Expectation.list(row.get("expected")), marks(row.get("expected")),
                    Expectation.list(row.get("printed")), Expectation.list(row.get("misprinted")), row.get("source"),
                    row.get("certainty")));
        }
        return rows;
    }

    private static Map<String, String> inputs(String cell) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String part : cell.split("\\s*\\|\\s*")) {
            if (!part.isEmpty()) {
                int eq = part.indexOf('=');
                inputs.put(part.substring(0, eq), part.substring(eq + 1));
            }
        }
        return inputs;
    }

    private static Set<String> marks(String cell) {
        Set<String> marks = new TreeSet<>();
        for (String part : cell.split("\\s*\\|\\s*")) {
            if (part.startsWith("!")) {
                marks.add(part.substring(1));
            }
        }
        return marks;
    }

    int numbers() {
        return (int) expected.stream().filter(e -> e.number() != null).count();
    }

    @Override
    public String toString() {
        return id + " " + calculation + " " + inputs;
    }
}

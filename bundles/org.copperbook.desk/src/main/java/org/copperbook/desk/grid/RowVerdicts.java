package org.copperbook.desk.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.check.Verdict;

/** The verdicts of a part by the row in which they stand; sorted out once, not for every row that is painted. */
final class RowVerdicts {

    private final GridModel model;
    private Map<Integer, List<Verdict>> byRow = Map.of();
    private List<Verdict> sortedOut = List.of();
    private Object rows;

    RowVerdicts(GridModel model) {
        this.model = model;
    }

    List<Verdict> of(int row, List<Verdict> verdicts) {
        if (verdicts != sortedOut || model.shownRows() != rows) {
            sortedOut = verdicts;
            rows = model.shownRows();
            byRow = new HashMap<>();
            for (Verdict v : verdicts) {
                int at = v.path() == null ? -1 : model.rowOf(v.path());
                if (at >= 0 && model.concerns(v.path(), at)) {
                    byRow.computeIfAbsent(at, r -> new ArrayList<>()).add(v);
                }
            }
        }
        return byRow.getOrDefault(row, List.of());
    }
}

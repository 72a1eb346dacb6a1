package org.copperbook.sheets.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Gathers problems row by row: neighbouring rows become one line, and a flood is counted and not listed. */
final class LogProblems {

    private static final int LISTED = 100;

    private static final class Run {
        private final LogProblem.Kind kind;
        private final String detail;
        private final long first;
        private long last;

        private Run(LogProblem.Kind kind, String detail, long row) {
            this.kind = kind;
            this.detail = detail;
            this.first = row;
            this.last = row;
        }
    }

    private final List<Run> runs = new ArrayList<>();
    private final Map<LogProblem.Kind, Run> open = new EnumMap<>(LogProblem.Kind.class);
    private final Map<LogProblem.Kind, Long> counts = new EnumMap<>(LogProblem.Kind.class);
    private final Map<LogProblem.Kind, Integer> listed = new EnumMap<>(LogProblem.Kind.class);

    void add(LogProblem.Kind kind, long row, String detail) {
        counts.merge(kind, 1L, Long::sum);
        Run run = open.get(kind);
        if (run != null && run.last >= row - 1 && run.detail.equals(detail)) {
            run.last = row;
            return;
        }
        Run begun = new Run(kind, detail, row);
        open.put(kind, begun);
        if (listed.merge(kind, 1, Integer::sum) <= LISTED) {
            runs.add(begun);
        }
    }

    long count(LogProblem.Kind kind) {
        return counts.getOrDefault(kind, 0L);
    }

    /** The problems in the order of their first rows; floods end with a line that counts the rest. */
    List<LogProblem> all() {
        List<LogProblem> out = new ArrayList<>();
        for (Run r : runs) {
            String rows = r.first == r.last ? LogWords.say("row", number(r.first))
                    : LogWords.say("rows", number(r.first), number(r.last));
            String detail = r.detail.isEmpty() ? "" : " " + r.detail;
            out.add(new LogProblem(r.kind, r.first, r.last, rows + ": " + LogWords.of(r.kind) + detail));
        }
        listed.forEach((kind, n) -> {
            if (n > LISTED) {
                out.add(new LogProblem(kind, 0, 0, LogWords.say("more", LogWords.of(kind), number(count(kind)),
                        number(LISTED))));
            }
        });
        return out;
    }

    private static String number(long n) {
        return Long.toString(n);
    }
}

package org.copperbook.sheets.record;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;

/** The verdicts of a job by the place they stand beside. */
public final class VerdictIndex {

    /** Heaviest first: what fails is never hidden behind what meets. */
    private static final List<Outcome> WEIGHT = List.of(Outcome.FAILS, Outcome.DOUBTFUL, Outcome.NOT_MEASURED,
            Outcome.NO_LIMIT_SET, Outcome.MEETS);

    private final List<Verdict> all;

    public VerdictIndex(List<Verdict> verdicts) {
        this.all = List.copyOf(verdicts);
    }

    public List<Verdict> all() {
        return all;
    }

    /** All verdicts, heaviest first, in the order of the record among equals. */
    List<Verdict> byWeight() {
        return all.stream().sorted(Comparator.comparingInt(v -> WEIGHT.indexOf(v.outcome()))).toList();
    }

    /** The heaviest verdict at a place of a part or below it; those on deviations stand in the comparison. */
    Optional<Verdict> beside(PartKey part, String pointer) {
        return all.stream()
                .filter(v -> v.part().equals(part) && !v.id().contains(".deviation."))
                .filter(v -> v.path().equals(pointer) || v.path().startsWith(pointer + "/"))
                .min(Comparator.comparingInt(v -> WEIGHT.indexOf(v.outcome())));
    }

    /** The first verdict at exactly this place whose id holds a word. */
    Optional<Verdict> at(PartKey part, String pointer, String word) {
        return all.stream().filter(v -> v.part().equals(part) && v.path().equals(pointer) && v.id().contains(word))
                .findFirst();
    }

    /** Verdicts whose id begins so. */
    List<Verdict> startingWith(String id) {
        return all.stream().filter(v -> v.id().startsWith(id)).toList();
    }

    /** How many current verdicts there are of each outcome. */
    Map<Outcome, Long> counts() {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        for (Outcome o : Outcome.values()) {
            counts.put(o, all.stream().filter(v -> v.current() && v.outcome() == o).count());
        }
        return counts;
    }
}

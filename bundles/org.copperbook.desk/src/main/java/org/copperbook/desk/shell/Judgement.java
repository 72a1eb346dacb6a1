package org.copperbook.desk.shell;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;

/**
 * What the checks say about a job.
 *
 * @param verdicts   verdicts, heaviest first
 * @param holdPoints hold points, in the order of a job's life
 * @param blocked    parts that may not be edited now, each with the reason in words
 */
public record Judgement(List<Verdict> verdicts, List<HoldPointState> holdPoints, Map<PartKey, String> blocked) {

    /** Before anything was computed. */
    public static final Judgement NONE = new Judgement(List.of(), List.of(), Map.of());

    public Judgement {
        verdicts = List.copyOf(verdicts);
        holdPoints = List.copyOf(holdPoints);
        blocked = Map.copyOf(blocked);
    }
}

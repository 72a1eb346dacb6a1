package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.WithstandTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Says that the insulation has not been read since the withstand test of a winding. A reading that is there is judged
 * with all others, the newest deciding; that one is asked for at all is common practice, no source.
 */
final class InsulationAfterCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        ReadingLog log = new ReadingLog(job);
        List<WithstandTest> tests = job.runUp().map(RunUp::withstands).orElse(List.of());
        for (WindingRole role : WindingRole.values()) {
            List<WithstandTest> made = tests.stream().filter(w -> w.winding() == role).toList();
            if (!made.isEmpty() && !read(role, made, log)) {
                out.add(VerdictDraft.of("insulation-after." + role.word(), PartKey.of(PartKind.RUN_UP),
                        Phrases.say("title.insulation-after", Phrases.word("role", role)))
                        .outcome(Outcome.NOT_MEASURED).path("/readings")
                        .reason(Phrases.say(last(made).isPresent() ? "insulation-after.missing" : "insulation-after.no-time"))
                        .settle(Phrases.say("settle.insulation-after")).done());
            }
        }
        return out;
    }

    /** Whether the insulation was read as left at or after the last withstand test. */
    static boolean read(WindingRole role, List<WithstandTest> made, ReadingLog log) {
        return last(made).map(tested -> log.of(role, ReadingQuantity.INSULATION_RESISTANCE, Reading.State.AS_LEFT).stream()
                .map(LoggedReading::reading)
                .anyMatch(r -> r.observed() != null && r.at() != null && !r.at().isBefore(tested))).orElse(false);
    }

    private static Optional<Instant> last(List<WithstandTest> made) {
        return made.stream().map(WithstandTest::at).filter(Objects::nonNull).max(Comparator.naturalOrder());
    }
}

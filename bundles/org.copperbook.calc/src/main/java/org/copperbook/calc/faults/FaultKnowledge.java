package org.copperbook.calc.faults;

import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Require;

/**
 * What is known of faults: suspects, tests, how probable each outcome is for each suspect, and what the trade's decision
 * table makes of some outcomes.
 *
 * @param suspects parts, whose priors add up to 1
 * @param tests tests, whose outcomes add up to 1 for each suspect
 * @param practice rows of the decision table
 * @param settledAt probability of the first suspect, above 0.5 and below 1, at which testing stops
 */
public record FaultKnowledge(List<Suspect> suspects, List<FaultTest> tests, List<PracticeRow> practice,
        double settledAt) {
    /** How far a sum of probabilities may be off one. */
    public static final double ROUNDING = 1e-6;

    public FaultKnowledge {
        suspects = List.copyOf(suspects);
        tests = List.copyOf(tests);
        practice = List.copyOf(practice);
        Require.between("probability that settles it", settledAt, 0.5, 1, "", "one suspect outweighs all others");
        addsUpToOne("prior probabilities", suspects.stream().mapToDouble(Suspect::prior).sum());
        for (FaultTest test : tests) {
            Require.positive("minutes of " + test.id(), test.minutes(), "min");
            for (int s = 0; s < suspects.size(); s++) {
                int suspect = s;
                addsUpToOne("outcomes of " + test.id() + " for " + suspects.get(s).id(),
                        test.outcomes().stream().mapToDouble(o -> o.likelihoods().get(suspect)).sum());
            }
        }
    }

    private static void addsUpToOne(String what, double sum) {
        Require.between(what, sum, 1 - ROUNDING, 1 + ROUNDING, "", "probabilities add up to one");
    }

    /**
     * @param id name of a test
     * @return that test
     * @throws OutOfRange when there is none of that name
     */
    public FaultTest test(String id) {
        return tests.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow(() -> new OutOfRange("test", id,
                String.join(", ", tests.stream().map(FaultTest::id).toList()), "no other test is known"));
    }
}

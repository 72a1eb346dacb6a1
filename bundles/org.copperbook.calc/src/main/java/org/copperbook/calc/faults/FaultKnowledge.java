package org.copperbook.calc.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Require;
import org.copperbook.calc.Tables;

/**
 * What is known of faults: suspects, tests, and how probable each outcome is for each suspect.
 *
 * @param suspects parts, whose priors add up to 1
 * @param tests tests, whose outcomes add up to 1 for each suspect
 */
public record FaultKnowledge(List<Suspect> suspects, List<FaultTest> tests) {
    private static final double ROUNDING = 1e-6;
    private static final FaultKnowledge STANDARD = load();

    public FaultKnowledge {
        suspects = List.copyOf(suspects);
        tests = List.copyOf(tests);
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

    /** @return the knowledge that travels with this library; its origin is common practice and stated in the tables */
    public static FaultKnowledge standard() {
        return STANDARD;
    }

    private static FaultKnowledge load() {
        List<Suspect> suspects = Tables.rows(FaultKnowledge.class, "suspects.csv").stream()
                .map(row -> new Suspect(row.get(0), Double.parseDouble(row.get(1)), row.get(2))).toList();
        List<List<String>> likelihoods = Tables.rows(FaultKnowledge.class, "likelihoods.csv");
        List<FaultTest> tests = new ArrayList<>();
        for (List<String> row : Tables.rows(FaultKnowledge.class, "tests.csv")) {
            List<FaultTest.Outcome> outcomes = likelihoods.stream().filter(l -> l.get(0).equals(row.get(0)))
                    .map(l -> new FaultTest.Outcome(l.get(1), l.get(2), IntStream.range(0, suspects.size())
                            .mapToObj(s -> Double.valueOf(l.get(3 + s))).toList())).toList();
            tests.add(new FaultTest(row.get(0), Double.parseDouble(row.get(1)), row.get(2), row.get(3), outcomes));
        }
        return new FaultKnowledge(suspects, tests);
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

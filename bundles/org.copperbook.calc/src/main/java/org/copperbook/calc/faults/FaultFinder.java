package org.copperbook.calc.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.Require;

/**
 * Weighs findings by Bayes' rule, one faulty part at a time and findings independent once the part is known. The next
 * best test is the one with the largest expected fall of entropy (Shannon) over its working time; where the trade's
 * decision table speaks, its checks come first.
 */
public final class FaultFinder {
    private static final double LEAST_LIKELIHOOD = 1e-4;
    private static final double LEAST_BITS = 1e-3;

    private final FaultKnowledge knowledge;

    /**
     * @param knowledge suspects, tests and likelihoods
     */
    public FaultFinder(FaultKnowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * @param findings outcomes so far, each test once unless several of its outcomes can hold; none is allowed
     * @return ranking and next tests
     * @throws org.copperbook.calc.OutOfRange when a test or outcome is not known, or a finding is given twice
     */
    public Diagnosis diagnose(List<Finding> findings) {
        refuseRepeated(findings);
        double[] probability = posterior(findings);
        List<Diagnosis.Ranked> ranked = new ArrayList<>();
        for (int s = 0; s < probability.length; s++) {
            ranked.add(new Diagnosis.Ranked(knowledge.suspects().get(s), probability[s], evidence(s, findings)));
        }
        ranked.sort(Comparator.comparingDouble(Diagnosis.Ranked::probability).reversed());
        Optional<PracticeRow> row = knowledge.practice().stream().filter(p -> p.speaksOn(findings)).findFirst();
        return new Diagnosis(ranked, next(findings, probability, row.orElse(null)), entropy(probability), row,
                ranked.get(0).probability() >= knowledge.settledAt());
    }

    private void refuseRepeated(List<Finding> findings) {
        Set<String> seen = new HashSet<>();
        for (Finding finding : findings) {
            FaultTest test = knowledge.test(finding.test());
            test.outcome(finding.outcome());
            Require.that(seen.add(test.several() ? test.id() + "=" + finding.outcome() : test.id()), "test",
                    finding.test(), "tests given once", "a repeated test replaces the earlier");
        }
    }

    private double[] posterior(List<Finding> findings) {
        double[] probability = knowledge.suspects().stream().mapToDouble(Suspect::prior).toArray();
        for (Finding finding : findings) {
            double sum = 0;
            for (int s = 0; s < probability.length; s++) {
                probability[s] *= likelihood(finding, s);
                sum += probability[s];
            }
            for (int s = 0; s < probability.length; s++) {
                probability[s] /= sum;
            }
        }
        return probability;
    }

    private double likelihood(Finding finding, int suspect) {
        return Math.max(LEAST_LIKELIHOOD,
                knowledge.test(finding.test()).outcome(finding.outcome()).likelihoods().get(suspect));
    }

    /** The others count by their shares before any finding, so that the weights do not depend on the order. */
    private List<Diagnosis.Evidence> evidence(int suspect, List<Finding> findings) {
        List<Diagnosis.Evidence> out = new ArrayList<>();
        for (Finding finding : findings) {
            double elsewhere = 0;
            double share = 0;
            for (int s = 0; s < knowledge.suspects().size(); s++) {
                if (s != suspect) {
                    elsewhere += knowledge.suspects().get(s).prior() * likelihood(finding, s);
                    share += knowledge.suspects().get(s).prior();
                }
            }
            out.add(new Diagnosis.Evidence(finding, log2(likelihood(finding, suspect) * share / elsewhere)));
        }
        out.sort(Comparator.comparingDouble((Diagnosis.Evidence e) -> Math.abs(e.bits())).reversed());
        return out;
    }

    private List<Diagnosis.NextTest> next(List<Finding> findings, double[] probability, PracticeRow row) {
        Set<String> made = new HashSet<>(findings.stream().map(Finding::test).toList());
        List<String> asked = row == null ? List.of() : row.checks().stream().filter(c -> !made.contains(c)).toList();
        List<Diagnosis.NextTest> next = new ArrayList<>();
        for (FaultTest test : knowledge.tests()) {
            if (!made.contains(test.id())) {
                double bits = expectedBits(test, probability);
                if (bits > LEAST_BITS || asked.contains(test.id())) {
                    next.add(new Diagnosis.NextTest(test, bits, bits / test.minutes(), asked.contains(test.id())));
                }
            }
        }
        Comparator<Diagnosis.NextTest> tellsMost = Comparator
                .comparingDouble(Diagnosis.NextTest::bitsPerMinute).reversed();
        Comparator<Diagnosis.NextTest> practiceFirst = Comparator.comparing(n -> !n.byPractice());
        if (row != null && row.inOrder()) {
            practiceFirst = practiceFirst.thenComparing(n -> asked.indexOf(n.test().id()));
        }
        next.sort(practiceFirst.thenComparing(tellsMost));
        return next;
    }

    /** Entropy now less the entropy expected after the test. */
    private static double expectedBits(FaultTest test, double[] probability) {
        double after = 0;
        for (FaultTest.Outcome outcome : test.outcomes()) {
            double[] joint = new double[probability.length];
            double sum = 0;
            for (int s = 0; s < joint.length; s++) {
                joint[s] = probability[s] * outcome.likelihoods().get(s);
                sum += joint[s];
            }
            if (sum > 0) {
                for (int s = 0; s < joint.length; s++) {
                    joint[s] /= sum;
                }
                after += sum * entropy(joint);
            }
        }
        return Math.max(0, entropy(probability) - after);
    }

    private static double entropy(double[] probability) {
        double bits = 0;
        for (double p : probability) {
            bits -= p > 0 ? p * log2(p) : 0;
        }
        return bits;
    }

    private static double log2(double x) {
        return Math.log(x) / Math.log(2);
    }
}

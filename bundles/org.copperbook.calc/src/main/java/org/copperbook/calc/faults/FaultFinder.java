package org.copperbook.calc.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.calc.Require;

/**
 * Weighs findings by Bayes' rule, one faulty part at a time and findings independent once the part is known. The next
 * best test is the one with the largest expected fall of entropy (Shannon) over its working time.
 */
public final class FaultFinder {
    private static final double LEAST_LIKELIHOOD = 1e-4;

    private final FaultKnowledge knowledge;

    /**
     * @param knowledge suspects, tests and likelihoods
     */
    public FaultFinder(FaultKnowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * @param findings outcomes so far, each test once; none is allowed
     * @return ranking and next tests
     * @throws org.copperbook.calc.OutOfRange when a test or outcome is not known, or a test is given twice
     */
    public Diagnosis diagnose(List<Finding> findings) {
        double[] probability = posterior(findings);
        Set<String> made = new HashSet<>(findings.stream().map(Finding::test).toList());
        List<Diagnosis.Ranked> ranked = new ArrayList<>();
        for (int s = 0; s < probability.length; s++) {
            ranked.add(new Diagnosis.Ranked(knowledge.suspects().get(s), probability[s]));
        }
        ranked.sort(Comparator.comparingDouble(Diagnosis.Ranked::probability).reversed());
        List<Diagnosis.NextTest> next = new ArrayList<>();
        for (FaultTest test : knowledge.tests()) {
            if (!made.contains(test.id())) {
                double bits = expectedBits(test, probability);
                next.add(new Diagnosis.NextTest(test, bits, bits / test.minutes()));
            }
        }
        next.sort(Comparator.comparingDouble(Diagnosis.NextTest::bitsPerMinute).reversed());
        return new Diagnosis(ranked, next, entropy(probability));
    }

    private double[] posterior(List<Finding> findings) {
        double[] probability = knowledge.suspects().stream().mapToDouble(Suspect::prior).toArray();
        Set<String> seen = new HashSet<>();
        for (Finding finding : findings) {
            Require.that(seen.add(finding.test()), "test", finding.test(), "tests given once",
                    "a repeated test replaces the earlier");
            FaultTest.Outcome outcome = knowledge.test(finding.test()).outcome(finding.outcome());
            double sum = 0;
            for (int s = 0; s < probability.length; s++) {
                probability[s] *= Math.max(LEAST_LIKELIHOOD, outcome.likelihoods().get(s));
                sum += probability[s];
            }
            for (int s = 0; s < probability.length; s++) {
                probability[s] /= sum;
            }
        }
        return probability;
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
            bits -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
        }
        return bits;
    }
}

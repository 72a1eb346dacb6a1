package org.copperbook.calc.faults;

import java.util.List;
import java.util.Optional;

/**
 * What the findings so far say.
 *
 * @param suspects parts by falling probability
 * @param nextTests tests not yet made that still tell something, the best first
 * @param uncertaintyBits what is still open, in bits: 0 when one part is certain
 * @param practice row of the trade's decision table that speaks on the findings; empty where none does
 * @param settled whether the first suspect is probable enough to stop testing and open it up
 */
public record Diagnosis(List<Ranked> suspects, List<NextTest> nextTests, double uncertaintyBits,
        Optional<PracticeRow> practice, boolean settled) {
    public Diagnosis {
        suspects = List.copyOf(suspects);
        nextTests = List.copyOf(nextTests);
    }

    /** The likeliest part. */
    public Ranked first() {
        return suspects.get(0);
    }

    /**
     * A part with its probability.
     *
     * @param suspect part
     * @param probability that the fault lies in it, given the findings
     * @param evidence what each finding says of it, the heaviest first
     */
    public record Ranked(Suspect suspect, double probability, List<Evidence> evidence) {
        public Ranked {
            evidence = List.copyOf(evidence);
        }
    }

    /**
     * What one finding says of one part.
     *
     * @param finding the finding
     * @param bits weight of evidence: logarithm to base 2 of how much likelier the finding is with the fault in this
     *        part than with it elsewhere; positive speaks for it, negative against
     */
    public record Evidence(Finding finding, double bits) {
    }

    /**
     * A test worth making.
     *
     * @param test test
     * @param bits information it is expected to give
     * @param bitsPerMinute information over working time
     * @param byPractice whether the trade's decision table asks for it now
     */
    public record NextTest(FaultTest test, double bits, double bitsPerMinute, boolean byPractice) {
    }
}

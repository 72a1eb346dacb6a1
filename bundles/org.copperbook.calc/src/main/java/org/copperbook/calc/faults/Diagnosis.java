package org.copperbook.calc.faults;

import java.util.List;

/**
 * What the findings so far say.
 *
 * @param suspects parts by falling probability
 * @param nextTests tests not yet made, by falling information per minute
 * @param uncertaintyBits what is still open, in bits: 0 when one part is certain
 */
public record Diagnosis(List<Ranked> suspects, List<NextTest> nextTests, double uncertaintyBits) {
    public Diagnosis {
        suspects = List.copyOf(suspects);
        nextTests = List.copyOf(nextTests);
    }

    /**
     * A part with its probability.
     *
     * @param suspect part
     * @param probability that the fault lies in it, given the findings
     */
    public record Ranked(Suspect suspect, double probability) {
    }

    /**
     * A test worth making.
     *
     * @param test test
     * @param bits information it is expected to give
     * @param bitsPerMinute information over working time
     */
    public record NextTest(FaultTest test, double bits, double bitsPerMinute) {
    }
}

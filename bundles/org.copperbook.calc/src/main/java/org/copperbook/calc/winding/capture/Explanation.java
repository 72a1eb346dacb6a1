package org.copperbook.calc.winding.capture;

import java.util.List;

/**
 * Slips that the readings cannot tell apart, with the probability that one of them is the cause.
 *
 * @param slips members, likeliest first, at least one
 * @param probability of all together, given the readings
 * @param partingTests what would tell the members apart; empty for a single one
 */
public record Explanation(List<Slip> slips, double probability, List<String> partingTests) {
    public Explanation {
        slips = List.copyOf(slips);
        partingTests = List.copyOf(partingTests);
    }

    /**
     * @param slip a slip
     * @return whether it is a member
     */
    public boolean includes(Slip slip) {
        return slips.contains(slip);
    }
}

package org.copperbook.calc.verdict;

/**
 * The outcome of a guarded decision.
 *
 * @param outcome the answer
 * @param probabilityOfConformity 0 to 1; not a number when nothing was measured or no limit is set
 */
public record Decision(Outcome outcome, double probabilityOfConformity) {
}

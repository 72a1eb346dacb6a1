package org.copperbook.calc.winding.capture;

import java.util.List;

/**
 * Outcome of a capture check.
 *
 * @param cleanProbability probability that the capture has none of the slips considered, given the readings
 * @param questioned whether the capture is questioned
 * @param explanations slips by falling probability, those that cannot be told apart together
 * @param comparisons each reading beside what the capture implies, in the order given
 * @param sentence the outcome in plain words
 */
public record CaptureReport(double cleanProbability, boolean questioned, List<Explanation> explanations,
        List<Comparison> comparisons, String sentence) {
    public CaptureReport {
        explanations = List.copyOf(explanations);
        comparisons = List.copyOf(comparisons);
    }

    /**
     * A reading beside its prediction.
     *
     * @param reading what was measured
     * @param predicted what the capture implies, in the unit of the reading
     * @param deviation measured over predicted less one
     * @param expanded expanded uncertainty of that deviation (factor 2), mean turn, wire and temperature included
     */
    public record Comparison(CaptureReading reading, double predicted, double deviation, double expanded) {
    }
}

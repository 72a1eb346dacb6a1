package org.copperbook.calc.faults;

import java.util.List;
import org.copperbook.calc.OutOfRange;

/**
 * A question or test.
 *
 * @param id name in files
 * @param minutes working time it takes
 * @param question what is asked, in the trade's words
 * @param several whether more than one outcome can hold at once, as with symptoms told by the customer
 * @param outcomes possible outcomes
 */
public record FaultTest(String id, double minutes, String question, boolean several, List<Outcome> outcomes) {
    public FaultTest {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * A possible outcome.
     *
     * @param id name in files
     * @param inWords outcome in the trade's words
     * @param likelihoods probability of this outcome by suspect, in the order of the suspects
     */
    public record Outcome(String id, String inWords, List<Double> likelihoods) {
        public Outcome {
            likelihoods = List.copyOf(likelihoods);
        }
    }

    /**
     * @param outcomeId name of an outcome
     * @return that outcome
     * @throws OutOfRange when the test has no such outcome
     */
    public Outcome outcome(String outcomeId) {
        return outcomes.stream().filter(o -> o.id().equals(outcomeId)).findFirst()
                .orElseThrow(() -> new OutOfRange("outcome of " + id, outcomeId,
                        String.join(", ", outcomes.stream().map(Outcome::id).toList()),
                        "the test has no other outcome"));
    }
}

package org.copperbook.calc.faults;

import java.util.List;

/**
 * A row of a decision table that the trade works by. Where it speaks it goes before computed information.
 *
 * @param finding the outcome it speaks on
 * @param unless findings that take the word from it, such as a speed outside its band
 * @param says what practice makes of it, in the trade's words
 * @param sound parts it clears, by name
 * @param suspects parts it leaves, by name
 * @param checks tests it asks for, by name
 * @param inOrder whether suspects and checks stand in the order in which they are taken
 */
public record PracticeRow(Finding finding, List<Finding> unless, String says, List<String> sound,
        List<String> suspects, List<String> checks, boolean inOrder) {
    public PracticeRow {
        unless = List.copyOf(unless);
        sound = List.copyOf(sound);
        suspects = List.copyOf(suspects);
        checks = List.copyOf(checks);
    }

    /** Whether the row speaks on these findings. */
    public boolean speaksOn(List<Finding> findings) {
        return findings.contains(finding) && unless.stream().noneMatch(findings::contains);
    }
}

package org.copperbook.calc.faults;

/**
 * A part the fault may lie in.
 *
 * @param id name in files
 * @param prior probability before any finding, above 0 and below 1
 * @param inWords name in the trade's words
 */
public record Suspect(String id, double prior, String inWords) {
}

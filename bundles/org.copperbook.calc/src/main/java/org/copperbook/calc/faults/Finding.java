package org.copperbook.calc.faults;

/**
 * The outcome of a test that was made.
 *
 * @param test name of the test
 * @param outcome name of its outcome
 */
public record Finding(String test, String outcome) {
}

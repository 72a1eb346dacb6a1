package org.copperbook.calc.winding.capture;

/**
 * A slip with its prior probability and the logarithm by which it moves each reading.
 *
 * @param slip null for the clean capture
 * @param prior probability before any reading
 * @param shift natural logarithm of the value with the slip over the value without, by reading
 */
record Hypothesis(Slip slip, double prior, double[] shift) {
}

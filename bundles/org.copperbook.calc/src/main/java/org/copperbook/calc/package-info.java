/**
 * Pure calculations of an electrical rewind workshop. No input or output, no window, no state: every
 * function states its units, its source and the range in which it holds, and refuses what lies outside
 * with {@link org.copperbook.calc.OutOfRange}.
 */
package org.copperbook.calc;

/**
 * Checks a captured winding against what was measured on it, and names the single slip that would best account for a
 * difference. SI units.
 */
package org.copperbook.calc.winding.capture;

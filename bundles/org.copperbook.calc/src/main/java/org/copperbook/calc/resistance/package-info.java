/** Winding resistance: temperature correction, phase values from terminal values, unbalance, as found against as left. */
package org.copperbook.calc.resistance;

/** Rotating rectifier and excitation: bridge relations, diode readings, the separate-excitation run. */
package org.copperbook.calc.excitation;

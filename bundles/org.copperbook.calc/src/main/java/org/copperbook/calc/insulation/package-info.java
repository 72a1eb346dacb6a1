/** Insulation resistance judged by IEEE 43: minima, temperature correction, indices, test voltage. */
package org.copperbook.calc.insulation;

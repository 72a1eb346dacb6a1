/** Finds past windings that resemble a machine on the bench. */
package org.copperbook.calc.winding.memory;

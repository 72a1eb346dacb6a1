/** Electromotive force, flux densities, redesign and the first winding of a bare core. SI units. */
package org.copperbook.calc.winding.design;

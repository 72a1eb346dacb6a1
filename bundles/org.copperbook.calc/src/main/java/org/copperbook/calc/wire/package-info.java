/**
 * Winding wire: gauges, metric sizes, strips, enamel, gauging, substitution and slot fill. SI units unless a name says
 * otherwise.
 */
package org.copperbook.calc.wire;

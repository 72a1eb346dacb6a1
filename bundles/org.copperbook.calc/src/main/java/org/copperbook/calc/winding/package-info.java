/**
 * Windings as data, and what follows from them: factors, balance, resistance, connections, capture check and design.
 * Slots, phases and groups are counted from one. SI units throughout unless a name says otherwise.
 */
package org.copperbook.calc.winding;

/** Typed quantities in SI units, and their reading and showing as text at the edge. */
package org.copperbook.calc.quantity;

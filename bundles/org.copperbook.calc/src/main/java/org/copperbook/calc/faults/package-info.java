/**
 * Ranks the parts of a brushless alternator by how likely the fault lies in them, and names the next test that tells
 * most for least work.
 */
package org.copperbook.calc.faults;

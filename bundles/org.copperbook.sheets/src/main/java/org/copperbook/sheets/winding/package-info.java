/** Drawings of windings from their coil lists: what the data say, and in words what they do not say. */
package org.copperbook.sheets.winding;

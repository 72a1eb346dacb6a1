/** A first winding for a bare core, where nothing is left to copy. */
package org.copperbook.winding.design;

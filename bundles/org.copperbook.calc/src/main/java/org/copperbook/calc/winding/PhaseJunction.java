package org.copperbook.calc.winding;

/** How three phases meet. */
public enum PhaseJunction {
    /** Finishes joined to a neutral point. */
    STAR,
    /** Each finish joined to the next start. */
    DELTA
}

package org.copperbook.calc.winding;

/** How the coils of one group lie to each other. */
public enum CoilLayout {
    /** Coils of one size, each a slot further on. */
    LAP,
    /** Coils of different sizes around one axis. */
    CONCENTRIC
}

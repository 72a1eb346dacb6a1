package org.copperbook.calc.winding;

/** How many coil groups a phase has. */
public enum Grouping {
    /** A group for each pole; neighbouring groups of one phase are connected in opposite sense. */
    GROUP_PER_POLE,
    /** A group for each pair of poles, all in one sense (single-layer windings). */
    GROUP_PER_POLE_PAIR
}

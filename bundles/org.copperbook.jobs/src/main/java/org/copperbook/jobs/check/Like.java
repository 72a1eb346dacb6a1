package org.copperbook.jobs.check;

/** What a resistance was read across; only like is compared with like. */
enum Like {
    /** A whole phase. */
    PHASE,
    /** One of the sections of a phase, each with its own pair of leads. */
    SECTION,
    /** Several sections of a phase in series. */
    THROUGH,
    /** A whole field. */
    WHOLE,
    /** Between two line terminals. */
    LINE,
    /** A coil group or pole. */
    GROUP
}

package org.copperbook.calc.wire;

/** The three ways in which round winding wire is sized. */
public enum WireSystem {
    /** American wire gauge, ASTM B258. */
    AWG,
    /** British standard wire gauge, BS 3737. */
    SWG,
    /** Metric nominal conductor diameters, IEC 60317-0-1. */
    METRIC
}

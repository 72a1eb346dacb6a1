package org.copperbook.calc.insulation;

/** How the resistance of an insulation falls with temperature (IEEE 43-2013, 6.3). */
public enum InsulationSystem {
    /** Asphaltic and other old systems: halves for every 10 kelvin. */
    THERMOPLASTIC,
    /** Epoxy and polyester systems: exponential in the inverse of absolute temperature, two ranges. */
    THERMOSETTING
}

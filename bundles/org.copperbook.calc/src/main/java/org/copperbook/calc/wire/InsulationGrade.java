package org.copperbook.calc.wire;

/** Enamel build of a round winding wire, IEC 60317-0-1. */
public enum InsulationGrade {
    /** No insulation. */
    BARE,
    /** Single build. */
    GRADE_1,
    /** Heavy build. */
    GRADE_2
}

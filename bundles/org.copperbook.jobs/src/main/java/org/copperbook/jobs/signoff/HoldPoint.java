package org.copperbook.jobs.signoff;

/** Points that nothing passes until the named role has signed. */
public enum HoldPoint {
    /** Two counts agree, wire gauged, photos taken; before stripping. Signed by the winder, countersigned. */
    CAPTURE_COMPLETE,
    /** Loop test inside limits before and after burn-out; before winding. Signed by the tester. */
    CORE_PROVED,
    /** Resistance, insulation, surge, polarity; before impregnation. Signed by the winder and the tester. */
    WINDING_PROVED,
    /** Complete set, right polarity, torque, isolated readings; before closing. Signed by the tester. */
    RECTIFIER_COMPLETE,
    /** Every required test present and every verdict settled. Signed by the quality checker, never the winder. */
    RELEASE
}

package org.copperbook.calc.winding.design;

/** Kinds of machine that differ in their usual flux densities. */
public enum MachineType {
    /** Synchronous machine with salient poles. */
    SALIENT_POLE,
    /** Synchronous machine with a cylindrical rotor. */
    CYLINDRICAL_ROTOR,
    /** Induction machine. */
    INDUCTION
}

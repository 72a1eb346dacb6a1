package org.copperbook.jobs.booking;

/** Kinds of machine the shop takes in. */
public enum MachineKind {
    /** Brushless synchronous alternator: exciter, rotating rectifier, main field, main stator. */
    BRUSHLESS_ALTERNATOR,
    INDUCTION_MOTOR_CAGE,
    INDUCTION_MOTOR_WOUND_ROTOR;

    /** Whether the machine has an exciter and a rotating rectifier. */
    public boolean hasRectifier() {
        return this == BRUSHLESS_ALTERNATOR;
    }
}

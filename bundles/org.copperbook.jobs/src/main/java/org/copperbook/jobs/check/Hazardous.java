package org.copperbook.jobs.check;

import java.util.Locale;

/** Steps that can hurt somebody; each has its cautions. */
public enum Hazardous {
    SEPARATE_EXCITATION(true),
    WITHSTAND(true),
    SURGE(true),
    CORE_LOOP(true),
    FLASHING(true),
    OVERSPEED(true),
    LIVE_RUN_UP(true),
    INSULATION_TEST(false),
    LIFTING(false),
    BURN_OUT(false);

    private final boolean acknowledged;

    Hazardous(boolean acknowledged) {
        this.acknowledged = acknowledged;
    }

    /** Whether the cautions are acknowledged by name before a record of the step can be opened. */
    public boolean acknowledgedByName() {
        return acknowledged;
    }

    /** The step as it stands in records of acknowledgement, e.g. "core-loop". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

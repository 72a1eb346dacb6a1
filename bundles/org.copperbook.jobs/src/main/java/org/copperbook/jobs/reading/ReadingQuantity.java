package org.copperbook.jobs.reading;

/** What a reading measures; each is held in the SI unit named. */
public enum ReadingQuantity {
    /** Winding resistance, ohm. */
    RESISTANCE,
    /** Insulation resistance, ohm. */
    INSULATION_RESISTANCE,
    /** Volts. */
    VOLTAGE,
    /** Diode-test range, volts dropped. */
    DIODE_VOLTS,
    /** Diode read on an ohm range, ohm. */
    DIODE_OHMS
}

package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * A two-wire resistance reading holds the leads and contacts as well. Their resistance is read with the probes together and
 * taken off; what remains uncertain of it is often more than the meter's own accuracy. Source: JCGM 100:2008, 5.1.
 */
public final class TwoWire {

    private TwoWire() {
    }

    /**
     * The winding alone, ohm.
     *
     * @param reading what the meter showed, ohm
     * @param leads resistance of leads and contacts, ohm; with its standard uncertainty when it was only estimated
     */
    public static Uncertain withoutLeads(Uncertain reading, Uncertain leads) {
        Require.notNegative("lead resistance", leads.value(), "ohm");
        return new Uncertain(reading.value() - leads.value(), Math.hypot(reading.u(), leads.u()));
    }
}

package org.copperbook.jobs.check;

import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.verdict.Bounds;

/** A maker's resistance limit, which belongs to the temperature at which the maker states it. */
final class MakersLimit {

    private MakersLimit() {
    }

    /** The limit at the workshop's reference temperature; null when none is set. */
    static Bounds atReference(LimitBook.Applied limit, Machine machine) {
        if (!limit.isSet() || limit.limit().atCelsius() == null) {
            return limit.bounds();
        }
        double f = TemperatureCorrection.factor(machine.conductor(), limit.limit().atCelsius(), machine.reference());
        Bounds b = limit.bounds();
        return new Bounds(b.lower() == null ? null : b.lower() * f, b.upper() == null ? null : b.upper() * f);
    }
}

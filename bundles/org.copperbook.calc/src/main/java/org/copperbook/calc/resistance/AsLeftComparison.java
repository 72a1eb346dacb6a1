package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * As found against as left, on one temperature.
 *
 * @param foundAtReference as-found resistance at the reference temperature, ohm
 * @param leftAtReference as-left resistance at the reference temperature, ohm
 * @param deviation left over found, less one (0.01 = 1 % higher as left), with correlated standard uncertainty
 * @param referenceCelsius the common temperature
 */
public record AsLeftComparison(Uncertain foundAtReference, Uncertain leftAtReference, Uncertain deviation,
        double referenceCelsius) {

    /** A resistance and the winding temperature at which it was read. */
    public record Reading(Uncertain ohms, Uncertain celsius) {
    }

    /** Compares readings that share nothing. */
    public static AsLeftComparison of(Reading found, Reading left, double referenceCelsius, Conductor conductor) {
        return of(found, left, referenceCelsius, conductor, SharedTerms.NONE);
    }

    /**
     * Compares two readings by IEC 60034-1, 8.6.2.3; the shared terms cancel in the deviation (JCGM 100:2008, F.1.2.3).
     * The deviation does not depend on the reference temperature.
     */
    public static AsLeftComparison of(Reading found, Reading left, double referenceCelsius, Conductor conductor,
            SharedTerms shared) {
        Require.positive("as-found resistance", found.ohms().value(), "ohm");
        SharedSources sources = new SharedSources(shared);
        Traced was = TemperatureCorrection.correct(found.ohms(), found.celsius(), referenceCelsius, conductor, sources);
        Traced is = TemperatureCorrection.correct(left.ohms(), left.celsius(), referenceCelsius, conductor, sources);
        return new AsLeftComparison(was.uncertain(), is.uncertain(), is.over(was).plus(-1).uncertain(),
                referenceCelsius);
    }
}

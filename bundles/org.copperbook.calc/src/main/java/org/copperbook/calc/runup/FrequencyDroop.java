package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * Speed regulation of a set. Source: C. I. Hubert, Electric Machines, section 9-5.
 *
 * @param regulation (no load - rated) / rated, a fraction
 * @param hertzPerWatt droop, Hz/W
 */
public record FrequencyDroop(double regulation, double hertzPerWatt) {

    /** From no-load and rated frequency in Hz, the first no lower, and rated power in W. */
    public static FrequencyDroop of(double noLoadHertz, double ratedHertz, double ratedWatts) {
        Require.positive("rated frequency", ratedHertz, "Hz");
        Require.that(noLoadHertz >= ratedHertz, "no-load frequency", noLoadHertz + " Hz",
                "values from " + ratedHertz + " Hz", "a governor droops with load");
        return new FrequencyDroop((noLoadHertz - ratedHertz) / ratedHertz,
                (noLoadHertz - ratedHertz) / Require.positive("rated power", ratedWatts, "W"));
    }

    /** Highest no-load frequency for a droop allowed, Hz. */
    public static double noLoadCeiling(double ratedHertz, double droop) {
        Require.between("droop", droop, 0, 0.2, "", "no set is allowed more");
        return Require.positive("rated frequency", ratedHertz, "Hz") * (1 + droop);
    }
}

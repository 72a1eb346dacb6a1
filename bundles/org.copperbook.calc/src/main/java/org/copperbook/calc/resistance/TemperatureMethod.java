package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/** How the temperature of an ac winding is measured by its rating. Source: IEC 60034-1, 8.6 (restated). */
public enum TemperatureMethod {
    /** By resistance, direct or superposed: up to 200 kW. */
    RESISTANCE,
    /** By resistance or by embedded detectors: above 200 kW and below 5 MW. */
    RESISTANCE_OR_DETECTORS,
    /** By embedded detectors: 5 MW and above. */
    EMBEDDED_DETECTORS;

    /** The method for a rating in W or VA. */
    public static TemperatureMethod forRating(double watts) {
        Require.positive("rated output", watts, "W");
        if (watts <= 200e3) {
            return RESISTANCE;
        }
        return watts < 5e6 ? RESISTANCE_OR_DETECTORS : EMBEDDED_DETECTORS;
    }
}

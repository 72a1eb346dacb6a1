package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * Insulation resistance brought to 40 degrees Celsius: R40 = KT RT.
 * Source: IEEE 43-2013, 6.3. Thermoplastic KT = 0.5^((40 - T)/10). Thermosetting KT = exp(-a (1/(T + 273) - 1/313)), with
 * a = 4230 K from 40 to 85 and 1245 K from 10 to 40 degrees (constants from memory of the clause).
 */
public final class InsulationTemperature {

    /** The temperature at which minima are stated, degrees Celsius. */
    public static final double REFERENCE = 40;

    private static final double UPPER = 4230;
    private static final double LOWER = 1245;

    private InsulationTemperature() {
    }

    /**
     * KT at a winding temperature. Thermoplastic from 0 to 100, thermosetting from 10 to 85 degrees Celsius; outside it
     * refuses, because the curves were not drawn there.
     */
    public static double factor(InsulationSystem system, double celsius) {
        if (system == InsulationSystem.THERMOPLASTIC) {
            Require.between("winding temperature", celsius, 0, 100, "°C",
                    "the halving rule was drawn for this range; below the dew point the reading means nothing");
            return Math.pow(0.5, (REFERENCE - celsius) / 10);
        }
        Require.between("winding temperature", celsius, 10, 85, "°C",
                "the two exponential ranges of IEEE 43-2013 end here");
        double a = celsius >= REFERENCE ? UPPER : LOWER;
        return Math.exp(-a * (1 / (celsius + 273) - 1 / 313.0));
    }

    /** The logarithmic fit 10^(0.0301 t - 1.2041), within 0.1 % of the halving rule; t from 0 to 100. */
    public static double logarithmicFactor(double celsius) {
        Require.between("winding temperature", celsius, 0, 100, "°C", "the fitted line was drawn for this range");
        return Math.pow(10, 0.0301 * celsius - 1.2041);
    }

    /** A reading at 40 degrees with reading and temperature uncertainty in quadrature. */
    public static Uncertain to40(InsulationSystem system, Uncertain ohms, Uncertain celsius) {
        double k = factor(system, celsius.value());
        double slope = system == InsulationSystem.THERMOPLASTIC
                ? Math.log(2) / 10
                : (celsius.value() >= REFERENCE ? UPPER : LOWER) / Math.pow(celsius.value() + 273, 2);
        double value = k * ohms.value();
        return new Uncertain(value, Math.hypot(k * ohms.u(), value * slope * celsius.u()));
    }

    /**
     * A reading brought from one temperature to another by the halving rule.
     *
     * @param ohms reading at the first temperature
     */
    public static double halving(double ohms, double fromCelsius, double toCelsius) {
        Require.positive("insulation resistance", ohms, "ohm");
        return ohms * factor(InsulationSystem.THERMOPLASTIC, fromCelsius)
                / factor(InsulationSystem.THERMOPLASTIC, toCelsius);
    }
}

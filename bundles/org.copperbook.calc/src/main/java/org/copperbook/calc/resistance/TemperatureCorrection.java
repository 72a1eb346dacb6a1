package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * Resistance brought from one temperature to another: R(t2) = R(t1) (k + t2) / (k + t1).
 * Source: IEC 60034-1, 8.6.2.3 (k = 235 copper, 225 aluminium); IEEE 118 (234.5).
 * Valid from -60 to 300 degrees Celsius, where the resistance of both metals stays a straight line.
 */
public final class TemperatureCorrection {

    private static final double LOWEST = -60;
    private static final double HIGHEST = 300;

    private TemperatureCorrection() {
    }

    /** The factor (k + to) / (k + from); temperatures in degrees Celsius. */
    public static double factor(Conductor conductor, double fromCelsius, double toCelsius) {
        return (conductor.inferredZero() + celsius(toCelsius)) / (conductor.inferredZero() + celsius(fromCelsius));
    }

    /**
     * A resistance at the temperature wanted, with the uncertainties of reading and temperature in quadrature.
     *
     * @param ohms reading, ohm
     * @param celsius winding temperature at the reading
     * @param toCelsius reference temperature, exact
     */
    public static Uncertain correct(Uncertain ohms, Uncertain celsius, double toCelsius, Conductor conductor) {
        return correct(ohms, celsius, toCelsius, conductor, new SharedSources(SharedTerms.NONE)).uncertain();
    }

    /** The same, keeping what the reading shares with others of its set. */
    public static Traced correct(Uncertain ohms, Uncertain celsius, double toCelsius, Conductor conductor,
            SharedSources shared) {
        celsius(celsius.value());
        celsius(toCelsius);
        Traced k = shared.inferredZero(conductor.inferredZero());
        Traced target = k.plus(toCelsius);
        return shared.ohms(ohms).times(target).over(k.plus(shared.celsius(celsius)));
    }

    /** Refuses a winding temperature outside the range of the straight line. */
    static double celsius(double t) {
        return Require.between("winding temperature", t, LOWEST, HIGHEST, "°C",
                "the resistance of the metal follows its straight line only there");
    }
}

package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/**
 * The linear form R(t) = R(b) (1 + a (t - b)) with the coefficient a at its base temperature b. It agrees with k + t when
 * 1/a - b = k; a coefficient belongs to its base and is wrong at any other.
 * Source: J. Bird, Electrical Circuit Theory and Technology, chapter 3; IEC 60028 (0.00393 at 20 degrees for copper).
 *
 * @param perKelvin a, above 0 to 0.01 per kelvin
 * @param baseCelsius b, -60 to 300 degrees Celsius
 */
public record TemperatureCoefficient(double perKelvin, double baseCelsius) {

    /** Standard annealed copper (IEC 60028). */
    public static final TemperatureCoefficient COPPER_20 = new TemperatureCoefficient(0.00393, 20);

    /** Aluminium conductor (IEC 60287-1-1, table 1). */
    public static final TemperatureCoefficient ALUMINIUM_20 = new TemperatureCoefficient(0.00403, 20);

    public TemperatureCoefficient {
        Require.positive("temperature coefficient", perKelvin, "1/K");
        Require.between("temperature coefficient", perKelvin, 0, 0.01, "1/K", "no winding metal has a larger one");
        TemperatureCorrection.celsius(baseCelsius);
    }

    /** The coefficient from two readings of one winding: ohm at two different temperatures. */
    public static TemperatureCoefficient fromReadings(double ohms1, double celsius1, double ohms2, double celsius2,
            double baseCelsius) {
        Require.positive("first reading", ohms1, "ohm");
        Require.positive("second reading", ohms2, "ohm");
        Require.that(celsius1 != celsius2, "temperatures", celsius1 + " °C twice", "two different temperatures",
                "a slope needs two points");
        double slope = (ohms2 - ohms1) / (celsius2 - celsius1);
        double atBase = ohms1 + slope * (baseCelsius - celsius1);
        return new TemperatureCoefficient(slope / atBase, baseCelsius);
    }

    /** The inferred zero-resistance temperature that belongs to it: 1/a - b, degrees below zero. */
    public double inferredZero() {
        return 1 / perKelvin - baseCelsius;
    }

    /** The same metal's coefficient at another base. */
    public TemperatureCoefficient at(double celsius) {
        return new TemperatureCoefficient(1 / (inferredZero() + celsius), celsius);
    }

    /** R(to)/R(from). */
    public double factor(double fromCelsius, double toCelsius) {
        double k = inferredZero();
        return (k + TemperatureCorrection.celsius(toCelsius)) / (k + TemperatureCorrection.celsius(fromCelsius));
    }

    /**
     * Whether the pair looks like the usual slip: copper's 0.00393, which belongs to 20 degrees, with another base, or its
     * 0.0043, which belongs to 0 degrees. The slip costs 0.3 % from 25 to 75 degrees.
     */
    public boolean looksMisplaced() {
        boolean twentyElsewhere = Math.abs(perKelvin - 0.00393) < 0.000015 && Math.abs(baseCelsius - 20) > 1;
        boolean zeroElsewhere = perKelvin >= 0.0042 && perKelvin < 0.0044 && Math.abs(baseCelsius) > 5;
        return twentyElsewhere || zeroElsewhere;
    }
}

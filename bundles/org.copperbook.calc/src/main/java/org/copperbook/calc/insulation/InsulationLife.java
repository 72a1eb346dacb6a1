package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/**
 * Insulation life by the rule that so many kelvin more halve it (10 in the classic rule).
 * Source: I. L. Kosow, Electric Machinery and Transformers, chapter 13, examples 13-1 to 13-3.
 */
public final class InsulationLife {

    private InsulationLife() {
    }

    /**
     * Life at another temperature, in the unit of the reference life.
     *
     * @param referenceLife life at the reference temperature, positive
     * @param halvingKelvin kelvin that halve it, 4 to 20
     */
    public static double at(double celsius, double referenceCelsius, double referenceLife, double halvingKelvin) {
        Require.positive("reference life", referenceLife, "");
        Require.between("halving step", halvingKelvin, 4, 20, "K", "published steps lie there");
        Require.between("winding temperature", celsius, 0, 300, "°C", "the rule was drawn for running windings");
        Require.between("reference temperature", referenceCelsius, 0, 300, "°C",
                "the rule was drawn for running windings");
        return referenceLife * Math.pow(2, (referenceCelsius - celsius) / halvingKelvin);
    }
}

package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/**
 * Load loss at another temperature: the ohmic part rises with resistance, the stray part falls with it.
 * Source: A. S. Langsdorf, Theory of Alternating-Current Machinery, article on transformer losses; IEC 60076-1, annex E.
 *
 * @param ohmic ohmic part at the new temperature, W
 * @param stray stray part at the new temperature, W
 */
public record LoadLoss(double ohmic, double stray) {

    /**
     * Splits and converts.
     *
     * @param totalWatts load loss measured, W
     * @param ohmicWatts I²R part at the same temperature, W, no more than the total
     */
    public static LoadLoss at(double totalWatts, double ohmicWatts, double fromCelsius, double toCelsius,
            Conductor conductor) {
        Require.positive("load loss", totalWatts, "W");
        Require.between("ohmic part", ohmicWatts, 0, totalWatts, "W", "it is a part of the total");
        double f = TemperatureCorrection.factor(conductor, fromCelsius, toCelsius);
        return new LoadLoss(ohmicWatts * f, (totalWatts - ohmicWatts) / f);
    }

    /** Ohmic and stray together, W. */
    public double total() {
        return ohmic + stray;
    }
}

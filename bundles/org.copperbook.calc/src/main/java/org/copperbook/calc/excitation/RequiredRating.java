package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;

/**
 * What a replacement diode must carry.
 *
 * @param repetitivePeakReverseVolts least repetitive peak reverse voltage, V
 * @param meanAmperes least mean forward current, A
 * @param rmsAmperes rms current in service, A
 */
public record RequiredRating(double repetitivePeakReverseVolts, double meanAmperes, double rmsAmperes) {

    /**
     * Margins, as factors on the working value.
     *
     * @param voltage on the peak reverse voltage in service
     * @param current on the mean current in service
     */
    public record Margin(double voltage, double current) {

        /** Two and a half on volts, two on amperes: common practice, no source. */
        public static final Margin DEFAULT = new Margin(2.5, 2);

        public Margin {
            Require.between("voltage margin", voltage, 1, 10, "", "less than one is no margin");
            Require.between("current margin", current, 1, 10, "", "less than one is no margin");
        }
    }

    /** For a main field at its ceiling: direct volts and amperes. */
    public static RequiredRating of(RectifierRelations circuit, double fieldVolts, double fieldAmperes, Margin margin) {
        double peak = circuit.peakReverseVolts(circuit.lineVolts(fieldVolts));
        return new RequiredRating(peak * margin.voltage(), circuit.diodeMeanAmperes(fieldAmperes) * margin.current(),
                circuit.diodeRmsAmperes(fieldAmperes));
    }
}

package org.copperbook.calc.uncertainty;

import org.copperbook.calc.Require;

/**
 * The parts of the standard uncertainty that a set of resistance readings has in common, because one
 * meter, one pair of leads, one thermometer and one temperature constant served them all. They are part
 * of, not in addition to, the uncertainty of each reading.
 *
 * @param relativeGain relative standard uncertainty of the meter's gain (0.001 = 0.1 %)
 * @param leadOhms standard uncertainty of the lead and contact resistance in every reading, ohm
 * @param kelvin standard uncertainty of the thermometer common to every temperature, K
 * @param inferredZeroKelvin standard uncertainty of the conductor's inferred zero-resistance temperature, K
 */
public record SharedTerms(double relativeGain, double leadOhms, double kelvin, double inferredZeroKelvin) {

    /** Nothing shared: every reading stands for itself. */
    public static final SharedTerms NONE = new SharedTerms(0, 0, 0, 0);

    public SharedTerms {
        Require.notNegative("shared relative gain", relativeGain, "");
        Require.notNegative("shared lead resistance", leadOhms, "ohm");
        Require.notNegative("shared temperature", kelvin, "K");
        Require.notNegative("uncertainty of the inferred zero", inferredZeroKelvin, "K");
    }

    /** One meter for all readings, nothing else in common. */
    public static SharedTerms meter(InstrumentAccuracy accuracy) {
        return new SharedTerms(accuracy.sharedRelative(), 0, 0, 0);
    }

    /** The same with a shared lead resistance, ohm. */
    public SharedTerms withLead(double ohms) {
        return new SharedTerms(relativeGain, ohms, kelvin, inferredZeroKelvin);
    }

    /** The same with a shared thermometer, K. */
    public SharedTerms withThermometer(double u) {
        return new SharedTerms(relativeGain, leadOhms, u, inferredZeroKelvin);
    }

    /** The same with an uncertain inferred zero, K. */
    public SharedTerms withInferredZero(double u) {
        return new SharedTerms(relativeGain, leadOhms, kelvin, u);
    }
}

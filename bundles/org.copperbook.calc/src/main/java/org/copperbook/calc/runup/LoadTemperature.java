package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** How the rise of a winding follows load. The method is kept with the result: the two differ by tens of kelvin. */
public enum LoadTemperature {
    /** Rise in proportion to load, as I. L. Kosow, Electric Machinery and Transformers, examples 13-4 and 13-5. */
    LINEAR(1),
    /** Rise in proportion to the square of load current, ohmic loss alone. */
    SQUARE(2);

    private final int power;

    LoadTemperature(int power) {
        this.power = power;
    }

    /** Rise at another load, K; loads in one unit. */
    public double rise(double referenceRise, double referenceLoad, double load) {
        Require.positive("reference rise", referenceRise, "K");
        Require.between("load over reference load", Require.positive("load", load, "")
                / Require.positive("reference load", referenceLoad, ""), 0.05, 2, "", "the rule is for running loads");
        return referenceRise * Math.pow(load / referenceLoad, power);
    }

    /** Load that gives a rise allowed, in the unit of the reference load. */
    public double load(double referenceRise, double referenceLoad, double allowedRise) {
        Require.positive("reference rise", referenceRise, "K");
        Require.positive("allowed rise", allowedRise, "K");
        return Require.positive("reference load", referenceLoad, "")
                * Math.pow(allowedRise / referenceRise, 1.0 / power);
    }
}

package org.copperbook.calc.uncertainty;

import org.copperbook.calc.Require;

/**
 * The accuracy statement of a meter: so many per cent of reading and so many digits of its resolution,
 * taken as the half-width of a rectangular distribution.
 * Source: JCGM 100:2008, 4.3.7.
 *
 * @param percentOfReading per cent of the reading, 0 or more
 * @param digits counts of the last digit, 0 or more
 * @param resolution one count on the range used, in the unit of the reading, 0 or more
 */
public record InstrumentAccuracy(double percentOfReading, double digits, double resolution) {

    private static final double ROOT_3 = Math.sqrt(3);

    public InstrumentAccuracy {
        Require.notNegative("per cent of reading", percentOfReading, "%");
        Require.notNegative("digits", digits, "");
        Require.notNegative("resolution", resolution, "");
    }

    /** (a % of reading + b digits x resolution) / sqrt(3), in the unit of the reading. */
    public double standardUncertainty(double reading) {
        return (percentOfReading / 100 * Math.abs(reading) + digits * resolution) / ROOT_3;
    }

    /** The reading with its standard uncertainty. */
    public Uncertain of(double reading) {
        return new Uncertain(reading, standardUncertainty(reading));
    }

    /**
     * The part of the relative standard uncertainty that all readings of one meter on one range share (its gain).
     */
    public double sharedRelative() {
        return percentOfReading / 100 / ROOT_3;
    }
}

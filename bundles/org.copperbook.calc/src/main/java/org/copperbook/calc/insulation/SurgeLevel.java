package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/** Surge comparison levels, V peak. There is no single rule; a record keeps the one that was used. */
public enum SurgeLevel {
    /** 2E + 1000 V, common practice, no source. */
    WORKSHOP {
        @Override
        public double peakVolts(double u) {
            return 2 * volts(u) + 1000;
        }
    },
    /** New coils: 3.5 per unit, one per unit being the peak of line to earth (IEEE 522-2004, clause 6; from memory). */
    NEW_COIL_IEEE_522 {
        @Override
        public double peakVolts(double u) {
            return 3.5 * perUnit(u);
        }
    },
    /** In service: three quarters of the new level (IEEE 522-2004, clause 6; from memory). */
    MAINTENANCE_IEEE_522 {
        @Override
        public double peakVolts(double u) {
            return 0.75 * 3.5 * perUnit(u);
        }
    },
    /** Rated impulse 4 U + 5 kV (IEC 60034-15, table 1; from memory). */
    IMPULSE_IEC_60034_15 {
        @Override
        public double peakVolts(double u) {
            return 4 * volts(u) + 5000;
        }
    },
    /** Steep front, 0.65 of the rated impulse (IEC 60034-15, table 1; from memory). */
    STEEP_FRONT_IEC_60034_15 {
        @Override
        public double peakVolts(double u) {
            return 0.65 * (4 * volts(u) + 5000);
        }
    };

    /** The level for a rated line-to-line voltage in V, above 0 to 24 000. */
    public abstract double peakVolts(double ratedVolts);

    /** One per unit: the peak of the line-to-earth voltage, V. */
    public static double perUnit(double ratedVolts) {
        return volts(ratedVolts) * Math.sqrt(2.0 / 3);
    }

    private static double volts(double u) {
        Require.positive("rated voltage", u, "V");
        return Require.between("rated voltage", u, 0, 24_000, "V", "no workshop test covers more");
    }
}

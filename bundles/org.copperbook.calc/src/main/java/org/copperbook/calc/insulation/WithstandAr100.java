package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/**
 * High-potential test voltages of new windings, one minute. Source: ANSI/EASA AR100-2020, section 4, tables 4-4
 * (alternating) and 4-5 (direct). The direct column is printed with its own constants and is not always exactly 1.7 times
 * the alternating one.
 */
public enum WithstandAr100 {
    /** Armature of a brushless machine: 1000 + 2U, direct 1700 + 3.4U. */
    MAIN_STATOR {
        @Override
        public double alternating(double u) {
            return 1000 + 2 * volts(u);
        }

        @Override
        public double direct(double u) {
            return 1700 + 3.4 * volts(u);
        }
    },
    /** Field and exciter armature: 10 U, at least 1500, up to 350 V; above 2800 + 2U; direct 17 U, 2550; 4750 + 3.4U. */
    BRUSHLESS_FIELD_OR_EXCITER_ARMATURE {
        @Override
        public double alternating(double u) {
            return volts(u) <= 350 ? Math.max(1500, 10 * u) : 2800 + 2 * u;
        }

        @Override
        public double direct(double u) {
            return volts(u) <= 350 ? Math.max(2550, 17 * u) : 4750 + 3.4 * u;
        }
    },
    /** Rated 35 V or less: 500, direct 850. */
    UP_TO_35_V {
        @Override
        public double alternating(double u) {
            Require.between("rated voltage", volts(u), 0, 35, "V", "the line of the table holds up to 35 V");
            return 500;
        }

        @Override
        public double direct(double u) {
            alternating(u);
            return 850;
        }
    },
    /** Below 250 W and 250 V or less: 1000, direct 1700. */
    BELOW_250_W {
        @Override
        public double alternating(double u) {
            Require.between("rated voltage", volts(u), 0, 250, "V", "the line of the table holds up to 250 V");
            return 1000;
        }

        @Override
        public double direct(double u) {
            alternating(u);
            return 1700;
        }
    },
    /** Heaters, detectors and other devices on the frame: 1500, direct 2600 as printed. */
    DEVICE_ON_FRAME {
        @Override
        public double alternating(double u) {
            return 1500;
        }

        @Override
        public double direct(double u) {
            return 2600;
        }
    };

    /** Alternating test voltage, V rms; U in V, above 0 to 24 000. */
    public abstract double alternating(double ratedVolts);

    /** Direct test voltage, V. */
    public abstract double direct(double ratedVolts);

    private static double volts(double u) {
        Require.positive("rated voltage", u, "V");
        return Require.between("rated voltage", u, 0, 24_000, "V", "above it the voltage is agreed");
    }
}

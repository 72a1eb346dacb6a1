package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/**
 * Power-frequency withstand voltages of new windings, one minute, V rms. Source: IEC 60034-1:2004, table 16 and 9.2 (items
 * numbered as there; the repeat and part-rewound shares and the wound-rotor item from memory).
 */
public enum WithstandIec {
    /** Item 1: below 1 kW and rated below 100 V: 500 + 2U. */
    SMALL_BELOW_100_V {
        @Override
        public double newWinding(double u) {
            Require.between("rated voltage", volts(u), 0, 100, "V", "item 1 holds below 100 V");
            return 500 + 2 * u;
        }
    },
    /** Item 2: armature of a machine below 10 MW: 1000 + 2U, at least 1500. */
    STATOR {
        @Override
        public double newWinding(double u) {
            return Math.max(1500, 1000 + 2 * volts(u));
        }
    },
    /** Item 4: separately excited field of a dc machine, such as an exciter stator: 1000 + 2U, at least 1500. */
    SEPARATE_FIELD {
        @Override
        public double newWinding(double u) {
            return Math.max(1500, 1000 + 2 * volts(u));
        }
    },
    /** Item 5a: field of a synchronous machine: 10 Uf, at least 1500, up to 500 V; above 4000 + 2 Uf. */
    SYNCHRONOUS_FIELD {
        @Override
        public double newWinding(double u) {
            return volts(u) <= 500 ? Math.max(1500, 10 * u) : 4000 + 2 * u;
        }
    },
    /** Item 5b: field shorted, or on a low resistance, while the machine is started: 10 Uf, 1500 to 3500. */
    SYNCHRONOUS_FIELD_SHORTED_AT_START {
        @Override
        public double newWinding(double u) {
            return Math.min(3500, Math.max(1500, 10 * volts(u)));
        }
    },
    /** Item 6: secondary of a wound-rotor motor, not reversed while running: 1000 + 2 x open-circuit volts. */
    WOUND_ROTOR {
        @Override
        public double newWinding(double u) {
            return 1000 + 2 * volts(u);
        }
    },
    /** Item 7: exciter connected to the field it feeds: as that field, by its rated excitation voltage. */
    EXCITER_WITH_ITS_FIELD {
        @Override
        public double newWinding(double u) {
            return SYNCHRONOUS_FIELD.newWinding(u);
        }
    },
    /** Item 7, exception: exciter earthed or disconnected from the field during start: 1000 + 2U, at least 1500. */
    EXCITER_ISOLATED_AT_START {
        @Override
        public double newWinding(double u) {
            return Math.max(1500, 1000 + 2 * volts(u));
        }
    };

    /** Share of the full value for a repeat of the test (9.2). */
    public static final double REPEAT = 0.8;
    /** Share of the full value for a winding rewound in part (9.2). */
    public static final double PART_REWOUND = 0.75;
    /** Share of the lowest single value for an assembled group (table 16, item 8). */
    public static final double GROUP = 0.8;
    /** Direct over alternating test voltage (IEC 60034-1, 9.2; ANSI/EASA AR100, section 4). */
    public static final double DIRECT = 1.7;

    /** The voltage for a complete new winding; U in V, above 0 to 24 000. */
    public abstract double newWinding(double ratedVolts);

    /** After cleaning and drying: 1.5 U, at least 1000 V from 100 V rated, at least 500 V below (9.2). */
    public static double overhauled(double ratedVolts) {
        return Math.max(volts(ratedVolts) >= 100 ? 1000 : 500, 1.5 * ratedVolts);
    }

    private static double volts(double u) {
        Require.positive("rated voltage", u, "V");
        return Require.between("rated voltage", u, 0, 24_000, "V", "above it the voltage is agreed");
    }
}

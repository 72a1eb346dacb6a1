package org.copperbook.calc.winding.capture;

import org.copperbook.calc.Require;

/**
 * Something measured on the old winding. Every uncertainty is a relative standard uncertainty of this one reading
 * alone.
 */
public sealed interface CaptureReading {
    /** @return relative standard uncertainty of this reading alone */
    double uncertainty();

    /** @return measured value in the unit of its kind */
    double value();

    /**
     * Resistance of a coil group.
     *
     * @param group group from 1
     * @param value ohm, above 0
     * @param uncertainty relative standard uncertainty, 0.0001 to 0.5
     */
    record OfGroup(int group, double value, double uncertainty) implements CaptureReading {
        public OfGroup {
            check("group resistance", value, "ohm", uncertainty);
        }
    }

    /**
     * Resistance of a whole phase, circuits in parallel.
     *
     * @param phase phase from 1
     * @param value ohm, above 0
     * @param uncertainty relative standard uncertainty, 0.0001 to 0.5
     */
    record OfPhase(int phase, double value, double uncertainty) implements CaptureReading {
        public OfPhase {
            check("phase resistance", value, "ohm", uncertainty);
        }
    }

    /**
     * Mass of the copper taken out, burnt clean.
     *
     * @param value kg, above 0
     * @param uncertainty relative standard uncertainty, 0.0001 to 0.5; residue and lost ends usually make it about
     *     0.015
     */
    record OfMass(double value, double uncertainty) implements CaptureReading {
        public OfMass {
            check("copper mass", value, "kg", uncertainty);
        }
    }

    /**
     * Square-cell fill of the slots as estimated on the old winding.
     *
     * @param value share of the slot area, above 0
     * @param uncertainty relative standard uncertainty, 0.0001 to 0.5; an estimate by eye is hardly better than 0.07
     * @param slotArea slot area in m2 that the share refers to
     * @param grade enamel of the old wire
     */
    record OfFill(double value, double uncertainty, double slotArea, org.copperbook.calc.wire.InsulationGrade grade)
            implements CaptureReading {
        public OfFill {
            check("slot fill", value, "", uncertainty);
            Require.positive("slot area", slotArea, "m2");
        }
    }

    private static void check(String quantity, double value, String unit, double uncertainty) {
        Require.positive(quantity, value, unit);
        Require.between("relative standard uncertainty", uncertainty, 1e-4, 0.5, "",
                "a reading is neither perfect nor worthless");
    }
}

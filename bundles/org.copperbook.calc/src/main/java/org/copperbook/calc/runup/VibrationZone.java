package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** Evaluation zones of vibration velocity. Source: ISO 10816-1:1995, annex B (edges kept as guidance in ISO 20816-1). */
public enum VibrationZone {
    A, B, C, D;

    /** Machine classes of the annex, by size and foundation. */
    public enum MachineClass {
        I(0.71, 1.8, 4.5), II(1.12, 2.8, 7.1), III(1.8, 4.5, 11.2), IV(2.8, 7.1, 18);

        private final double[] edges;

        MachineClass(double... edges) {
            this.edges = edges;
        }

        /** Edges A/B, B/C, C/D in mm/s rms. */
        public double[] edges() {
            return edges.clone();
        }
    }

    /** The zone of a velocity in m/s rms; an edge belongs to the better zone. */
    public static VibrationZone of(MachineClass machine, double velocityRms) {
        double v = Require.notNegative("vibration velocity", velocityRms, "m/s") * 1000;
        for (int i = 0; i < 3; i++) {
            if (v <= machine.edges[i] * (1 + 1e-12)) {
                return values()[i];
            }
        }
        return D;
    }
}

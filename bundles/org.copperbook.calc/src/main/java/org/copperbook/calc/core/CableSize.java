package org.copperbook.calc.core;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.Require;

/** Nominal cross-sections of conductors (IEC 60228, table 1), mm2, for choosing a cable. */
public final class CableSize {

    private static final List<Double> NOMINAL = List.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0,
            70.0, 95.0, 120.0, 150.0, 185.0, 240.0, 300.0, 400.0, 500.0, 630.0, 800.0, 1000.0);

    private CableSize() {
    }

    /** The smallest nominal cross-section that is no less than an area, both in mm2; empty above 1000 mm2. */
    public static Optional<Double> noLessThan(double squareMm) {
        Require.positive("conductor area", squareMm, "mm\u00b2");
        return NOMINAL.stream().filter(s -> s >= squareMm * (1 - 1e-9)).findFirst();
    }
}

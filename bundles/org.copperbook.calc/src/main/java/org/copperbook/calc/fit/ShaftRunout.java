package org.copperbook.calc.fit;

import java.util.Optional;
import org.copperbook.calc.Require;

/**
 * Greatest runout of the shaft extension of an IEC machine, the change of the indicator midway along the extension.
 * Source: ANSI/EASA AR100-2015, table 2-4.
 */
public final class ShaftRunout {

    private static final double[][] TABLE = {{6, 10, 30}, {10, 18, 35}, {18, 30, 40}, {30, 50, 50}, {50, 80, 60},
        {80, 120, 70}, {120, 180, 80}, {180, 250, 90}, {250, 315, 100}, {315, 400, 110}, {400, 500, 125}, {500, 630, 140}};
    private static final double MICRO = 1e-6;
    private static final double MILLI = 1e-3;

    private ShaftRunout() {
    }

    /** Greatest runout, m, at a shaft diameter in m; empty at 6 mm and below and above 630 mm. */
    public static Optional<Double> extension(double diameter) {
        double mm = Require.positive("shaft diameter", diameter, "m") / MILLI;
        for (double[] row : TABLE) {
            if (mm > row[0] && mm <= row[1] + 1e-9) {
                return Optional.of(row[2] * MICRO);
            }
        }
        return Optional.empty();
    }
}

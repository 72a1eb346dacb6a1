package org.copperbook.calc.wire;

import java.util.Locale;
import org.copperbook.calc.Require;

/**
 * A rectangular conductor with rounded corners.
 *
 * @param width larger side in m, above 0
 * @param thickness smaller side in m, above 0, not above the width
 * @param cornerRadius radius of the four corners in m, 0 for sharp corners, at most half the thickness
 */
public record Strip(double width, double thickness, double cornerRadius) implements Conductor {
    public Strip {
        Require.positive("strip thickness", thickness, "m");
        Require.between("strip width", width, thickness, 0.1, "m",
                "the width is the larger side, and a strip is not a bar");
        Require.between("corner radius of a strip", cornerRadius, 0, thickness / 2, "m",
                "a corner cannot be rounder than half the thickness");
    }

    /** @return area less the four corners, {@code w t - (4 - pi) r^2} (geometry), in m2 */
    @Override
    public double area() {
        return width * thickness - (4 - Math.PI) * cornerRadius * cornerRadius;
    }

    @Override
    public String label() {
        return String.format(Locale.ROOT, "%.3f x %.3f mm", width * 1e3, thickness * 1e3);
    }
}

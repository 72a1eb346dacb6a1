package org.copperbook.jobs.nameplate;

import java.util.List;
import org.copperbook.jobs.nameplate.Nameplate.Rating;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Contradiction;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Figure;
import org.copperbook.jobs.nameplate.PlateCrossCheck.What;

/**
 * Names the figures of a plate that no machine has, and hands on those from which something can be computed.
 *
 * @param rating 0 for the plate's first rating, 1 for the first of the others ...
 * @param found  where they are named
 */
record PossibleFigures(int rating, List<Contradiction> found) {

    private static final double GIGA = 1e9;
    /** VA or W; the largest machines are rated about 2 GVA (from memory, no source). */
    private static final double LARGEST = 3e9;

    /** The rating without its figures that cannot be. */
    Rating of(Rating r) {
        return new Rating(power(Figure.APPARENT_POWER, r.apparentPowerVA()), power(Figure.POWER, r.powerW()),
                aboveZero(Figure.VOLTS, r.voltageV()), r.connection(), aboveZero(Figure.AMPS, r.currentA()),
                aboveZero(Figure.HERTZ, r.frequencyHz()), aboveZero(Figure.SPEED, r.speedRpm()), powerFactor(r.powerFactor()), null);
    }

    /** The figure where it can be; null where it is not stated or cannot be. */
    <N extends Number> N aboveZero(Figure figure, N value) {
        if (value == null || value.doubleValue() > 0) {
            return value;
        }
        found.add(new Contradiction(What.NOT_ABOVE_ZERO, rating, List.of(figure, value)));
        return null;
    }

    private Double power(Figure figure, Double value) {
        Double power = aboveZero(figure, value);
        if (power == null || power <= LARGEST) {
            return power;
        }
        found.add(new Contradiction(What.BEYOND_MACHINES, rating, List.of(power / GIGA)));
        return null;
    }

    private Double powerFactor(Double value) {
        if (value == null || value > 0 && value <= 1) {
            return value;
        }
        found.add(new Contradiction(What.POWER_FACTOR, rating, List.of(value)));
        return null;
    }
}

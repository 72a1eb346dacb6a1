package org.copperbook.calc.wire;

/**
 * Overall diameter of an insulated wire.
 *
 * @param maximum largest allowed diameter in m
 * @param minimum smallest diameter to expect in m: the thinnest conductor with the least enamel
 * @param source where the figures come from; says so when they lie between two tabulated sizes
 */
public record OverallDiameter(double maximum, double minimum, String source) {
    /** @return the middle of the range in m: what a micrometer is most likely to show */
    public double middle() {
        return (maximum + minimum) / 2;
    }
}

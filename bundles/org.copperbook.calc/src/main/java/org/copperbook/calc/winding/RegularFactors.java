package org.copperbook.calc.winding;

import org.copperbook.calc.Require;

/** Closed forms of the distribution and pitch factors of regular windings. */
public final class RegularFactors {
    private RegularFactors() {
    }

    /**
     * Pitch factor {@code sin(nu (span/pole pitch) pi/2)}, signed (Say, Alternating Current Machines; Theraja,
     * Electrical Technology, Ex. 37.5 prints the magnitudes).
     *
     * @param span coil span in slots, above 0
     * @param polePitch slots per pole, above 0
     * @param order order of the harmonic, from 1
     * @return factor between -1 and 1; another convention differs in sign by (-1)^((nu-1)/2)
     */
    public static double pitch(double span, double polePitch, int order) {
        Require.positive("coil span", span, "slots");
        Require.positive("pole pitch", polePitch, "slots");
        Require.between("order of a harmonic", order, 1, 100_000, "orders are counted from the working field");
        return Math.sin(order * span / polePitch * Math.PI / 2);
    }

    /**
     * Distribution factor of n phasors evenly spaced, {@code sin(n nu a/2)/(n sin(nu a/2))} (any textbook, for instance
     * Kosow, Electric Machinery and Transformers, ch. 2).
     *
     * @param count slots of the belt, from 1
     * @param slotAngle electrical angle from slot to slot in radians
     * @param order order of the harmonic, from 1
     * @return signed factor between -1 and 1
     */
    public static double distribution(int count, double slotAngle, int order) {
        Require.between("slots of a belt", count, 1, 10_000, "a belt has at least one slot");
        Require.finite("slot angle", slotAngle, "rad");
        Require.between("order of a harmonic", order, 1, 100_000, "orders are counted from the working field");
        double half = order * slotAngle / 2;
        double divisor = count * Math.sin(half);
        if (Math.abs(Math.sin(half)) < 1e-12) {
            return Math.cos(count * half) / Math.cos(half);
        }
        return Math.sin(count * half) / divisor;
    }

    /**
     * Distribution factor of a belt of a symmetrical winding with a whole or fractional number of slots per pole and
     * phase. With {@code q = a/b} in lowest terms the a phasors of a belt divide its spread evenly, so a takes the
     * place of q.
     *
     * @param slots slots
     * @param poles poles
     * @param phases phases
     * @return distribution factor of the working field, 0 to 1
     */
    public static double distribution(int slots, int poles, int phases) {
        int a = slots / greatestCommonDivisor(slots, poles * phases);
        double spread = Math.PI / phases;
        return Math.abs(distribution(a, spread / a, 1));
    }

    /**
     * Distribution factor of infinitely many slots spread over an angle, {@code sin(s/2)/(s/2)}.
     *
     * @param spread electrical angle in radians, above 0 and up to 2 pi
     * @return factor
     */
    public static double distributionOfSpread(double spread) {
        Require.between("belt spread", Require.positive("belt spread", spread, "rad"), 0, 2 * Math.PI, "rad",
                "a belt is part of the circle");
        return Math.sin(spread / 2) / (spread / 2);
    }

    static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}

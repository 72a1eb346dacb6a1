package org.copperbook.calc.winding.design;

import org.copperbook.calc.Require;

/**
 * A stator core.
 *
 * @param slots slots, 3 to 1000
 * @param bore bore in m, above 0
 * @param length gross core length in m, above 0
 * @param ironLength length of iron in m: length less ducts times the stacking factor (about 0.95, common practice); up
 *     to the length
 * @param toothWidth width of the narrowest part of a tooth in m, below the slot pitch
 * @param yokeDepth radial depth of iron behind the slots in m, above 0
 * @param slotArea usable area of a slot in m2, above 0
 */
public record CoreGeometry(int slots, double bore, double length, double ironLength, double toothWidth,
        double yokeDepth,
        double slotArea) {
    public CoreGeometry {
        Require.between("slots", slots, 3, 1000, "a distributed winding needs at least three");
        Require.positive("bore", bore, "m");
        Require.positive("core length", length, "m");
        Require.between("iron length", Require.positive("iron length", ironLength, "m"), 0, length, "m",
                "iron is part of the core");
        Require.between("tooth width", Require.positive("tooth width", toothWidth, "m"), 0, Math.PI * bore / slots, "m",
                "a tooth is narrower than the slot pitch");
        Require.positive("yoke depth", yokeDepth, "m");
        Require.positive("slot area", slotArea, "m2");
    }

    /** @return slot pitch at the bore in m */
    public double slotPitch() {
        return Math.PI * bore / slots;
    }

    /**
     * Flux densities for a flux per pole.
     *
     * @param webers flux per pole
     * @param poles poles
     * @return densities
     */
    public FluxDensities densities(double webers, int poles) {
        double gap = gap(webers, poles, bore, length);
        double tooth = tooth(gap, slotPitch(), toothWidth, length, ironLength);
        double yoke = yoke(webers, yokeDepth, ironLength);
        return new FluxDensities(gap, tooth, yoke);
    }

    /**
     * Peak flux density in the air gap of a sinusoidal field, {@code B = Phi p/(D L)} (any textbook on a.c. machines).
     *
     * @param webers flux per pole, 0 or more
     * @param poles poles
     * @param bore bore in m, above 0
     * @param length gross core length in m, above 0
     * @return T
     */
    public static double gap(double webers, int poles, double bore, double length) {
        return Require.notNegative("flux per pole", webers, "Wb") * Require.poles(poles) / 2
                / (Require.positive("bore", bore, "m") * Require.positive("core length", length, "m"));
    }

    /**
     * Apparent peak flux density of a tooth that carries the flux of its slot pitch.
     *
     * @param gap peak flux density in the gap in T, 0 or more
     * @param slotPitch slot pitch at the bore in m, above 0
     * @param toothWidth width of the narrowest part of a tooth in m, below the slot pitch
     * @param length gross core length in m, above 0
     * @param ironLength length of iron in m, up to the length
     * @return T
     */
    public static double tooth(double gap, double slotPitch, double toothWidth, double length, double ironLength) {
        Require.between("tooth width", Require.positive("tooth width", toothWidth, "m"), 0, slotPitch, "m",
                "a tooth is narrower than the slot pitch");
        Require.between("iron length", Require.positive("iron length", ironLength, "m"), 0, length, "m",
                "iron is part of the core");
        return gap * slotPitch * length / (toothWidth * ironLength);
    }

    /**
     * Peak flux density of a yoke that carries half the flux of a pole.
     *
     * @param webers flux per pole, 0 or more
     * @param yokeDepth radial depth of iron behind the slots in m, above 0
     * @param ironLength length of iron in m, above 0
     * @return T
     */
    public static double yoke(double webers, double yokeDepth, double ironLength) {
        return Require.notNegative("flux per pole", webers, "Wb")
                / (2 * Require.positive("yoke depth", yokeDepth, "m")
                        * Require.positive("iron length", ironLength, "m"));
    }

    /**
     * Peak flux densities: the tooth carries the flux of its slot pitch, the yoke half the flux of a pole (any textbook
     * on machine design, for instance Pyrhonen, Jokinen and Hrabovcova, ch. 3).
     *
     * @param gap in the air gap in T
     * @param tooth apparent, in the teeth in T
     * @param yoke in the yoke in T
     */
    public record FluxDensities(double gap, double tooth, double yoke) {
    }
}

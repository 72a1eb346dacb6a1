package org.copperbook.calc.core;

import org.copperbook.calc.Require;

/**
 * A stator core as the loop test sees it: the iron behind the slots. SI units.
 *
 * @param outerDiameter outside diameter of the core, m
 * @param backIron radial depth of iron behind the slots, m
 * @param length core length without ventilating ducts, m
 * @param stacking share of iron in that length, 0.8 to 1
 */
public record LoopCore(double outerDiameter, double backIron, double length, double stacking) {

    public LoopCore {
        Require.positive("outside diameter", outerDiameter, "m");
        Require.positive("back iron", backIron, "m");
        Require.that(backIron < outerDiameter / 2, "back iron", backIron + " m",
                "values below " + outerDiameter / 2 + " m", "it lies within the core's radius");
        Require.positive("core length", length, "m");
        Require.between("stacking factor", stacking, 0.8, 1, "", "laminated cores lie there");
    }

    /** From bore, slot depth and ducts. Lengths in m; ducts are counted. */
    public static LoopCore fromBore(double outerDiameter, double bore, double slotDepth, double grossLength, int ducts,
            double ductWidth, double stacking) {
        double backIron = (outerDiameter - bore) / 2 - slotDepth;
        return new LoopCore(outerDiameter, Require.positive("back iron", backIron, "m"),
                grossLength - ducts * ductWidth, stacking);
    }

    /** Iron area that carries the flux, m². */
    public double area() {
        return backIron * length * stacking;
    }

    /** Mean length of the flux path, m. */
    public double path() {
        return Math.PI * (outerDiameter - backIron);
    }

    /** Mass of the back iron, kg, without teeth; density in kg/m³. */
    public double mass(double density) {
        Require.between("density of steel", density, 7000, 8200, "kg/m³", "electrical steels lie there");
        return path() * area() * density;
    }
}

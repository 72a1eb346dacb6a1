package org.copperbook.calc.winding;

import org.copperbook.calc.Require;
import org.copperbook.calc.wire.ConductorMaterial;

/**
 * Length and area of a conductor that its mass and its resistance imply together, {@code m = gamma l A} and {@code R =
 * rho l/A}. It holds for a winding with one circuit.
 *
 * @param length m
 * @param area m2
 */
public record MassAndResistance(double length, double area) {

    /**
     * @param kilograms bare mass in kg, above 0
     * @param ohms resistance in ohm, above 0
     * @param celsius winding temperature in C
     * @param material conductor material
     * @return length and area
     */
    public static MassAndResistance of(double kilograms, double ohms, double celsius, ConductorMaterial material) {
        Require.positive("mass", kilograms, "kg");
        double at20 = Require.positive("resistance", ohms, "ohm") / material.factorFrom20(celsius);
        double length = Math.sqrt(at20 * kilograms / (material.resistivityAt20() * material.density()));
        return new MassAndResistance(length, kilograms / (material.density() * length));
    }
}

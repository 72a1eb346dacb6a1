package org.copperbook.calc.wire;

/** One bare conductor: a round wire of a known size, or a rectangular strip. */
public sealed interface Conductor permits WireSize, Strip {
    /** @return the name a winder writes on the card */
    String label();

    /** @return metal cross-section in m2 */
    double area();

    /**
     * @param material what the conductor is made of
     * @return resistance in ohm/m at 20 C
     */
    default double ohmsPerMetre(ConductorMaterial material) {
        return material.resistivityAt20() / area();
    }

    /**
     * @param material what the conductor is made of
     * @return bare mass in kg/m
     */
    default double kilogramsPerMetre(ConductorMaterial material) {
        return material.density() * area();
    }

    /** @return resistance of annealed copper in ohm/m at 20 C (IEC 60028 resistivity) */
    default double ohmsPerMetre() {
        return ohmsPerMetre(ConductorMaterial.COPPER);
    }

    /** @return bare mass of copper in kg/m (IEC 60028 density) */
    default double kilogramsPerMetre() {
        return kilogramsPerMetre(ConductorMaterial.COPPER);
    }
}

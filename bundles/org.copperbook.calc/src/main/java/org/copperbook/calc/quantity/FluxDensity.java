package org.copperbook.calc.quantity;

/** Magnetic flux density, tesla. */
public record FluxDensity(double teslas) implements Quantity {

    @Override
    public double si() {
        return teslas;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FLUX_DENSITY;
    }
}

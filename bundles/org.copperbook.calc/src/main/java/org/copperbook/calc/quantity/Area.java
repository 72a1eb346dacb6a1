package org.copperbook.calc.quantity;

/** Area, square metre. */
public record Area(double squareMetres) implements Quantity {

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }
}

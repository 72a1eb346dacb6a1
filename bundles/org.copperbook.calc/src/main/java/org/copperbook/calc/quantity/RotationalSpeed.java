package org.copperbook.calc.quantity;

/** Rotational speed, revolutions per second. */
public record RotationalSpeed(double perSecond) implements Quantity {

    /** From revolutions per minute. */
    public static RotationalSpeed ofRevolutionsPerMinute(double revolutions) {
        return new RotationalSpeed(revolutions / 60);
    }

    /** The speed in r/min. */
    public double revolutionsPerMinute() {
        return perSecond * 60;
    }

    @Override
    public double si() {
        return perSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ROTATIONAL_SPEED;
    }
}

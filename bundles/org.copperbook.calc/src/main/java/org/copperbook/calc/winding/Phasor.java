package org.copperbook.calc.winding;

/**
 * A phasor in rectangular form.
 *
 * @param re real part
 * @param im imaginary part
 */
public record Phasor(double re, double im) {
    /** @return length */
    public double magnitude() {
        return Math.hypot(re, im);
    }

    /** @return angle in degrees, above -180 and up to 180 */
    public double degrees() {
        return Math.toDegrees(Math.atan2(im, re));
    }

    /**
     * @param other phasor to subtract
     * @return difference
     */
    public Phasor minus(Phasor other) {
        return new Phasor(re - other.re, im - other.im);
    }

    /**
     * @param factor real factor
     * @return phasor times the factor
     */
    public Phasor times(double factor) {
        return new Phasor(re * factor, im * factor);
    }
}

package org.copperbook.jobs.reading;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * What an instrument showed: a value, or one of the answers that are findings in themselves. An open line, OL or
 * "> 2 Gohm" is kept as such and never forced into a number.
 *
 * @param kind  what was seen
 * @param value the value in SI units of the reading's quantity; for ABOVE_RANGE and BELOW_RESOLUTION the top of the
 *              range or the resolution where it was stated; null otherwise
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Observed(Kind kind, Double value) {

    /** The kinds of answer an instrument gives. */
    public enum Kind { VALUE, ABOVE_RANGE, BELOW_RESOLUTION, UNSTABLE, NOT_POSSIBLE }

    public Observed {
        if (kind == null) {
            throw new IllegalArgumentException("an observation needs its kind (VALUE, ABOVE_RANGE, ...)");
        }
        if (kind == Kind.VALUE && value == null) {
            throw new IllegalArgumentException("an observation of kind VALUE needs a value");
        }
        if (value != null && !Double.isFinite(value)) {
            throw new IllegalArgumentException("an observed value must be a finite number");
        }
    }

    public static Observed of(double value) {
        return new Observed(Kind.VALUE, value);
    }

    public static Observed aboveRange() {
        return new Observed(Kind.ABOVE_RANGE, null);
    }

    /** Whether this is a plain value that can be computed with. */
    public boolean isValue() {
        return kind == Kind.VALUE;
    }
}

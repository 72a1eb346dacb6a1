package org.copperbook.calc.catalogue;

import java.util.List;

import org.copperbook.calc.quantity.Dimension;

/** What an input accepts as text. */
public sealed interface InputType {

    /**
     * One number with a unit; a bare number is in the unit named.
     *
     * @param mayBeOpen whether "above range" (or "OL") is accepted; it arrives as positive infinity
     */
    record Number(Dimension dimension, String unit, boolean mayBeOpen) implements InputType {
    }

    /** Several numbers separated by semicolons. */
    record Numbers(Dimension dimension, String unit) implements InputType {
    }

    /** Points x:y separated by semicolons. */
    record Points(Dimension x, String xUnit, Dimension y, String yUnit) implements InputType {
    }

    /** A whole number. */
    record Whole() implements InputType {
    }

    /** One of the words given. */
    record Choice(List<String> options) implements InputType {
    }

    /** yes or no. */
    record Flag() implements InputType {
    }

    /** Text that the calculation reads itself, such as a wire size or a coil list. */
    record Text(String shape) implements InputType {
    }
}

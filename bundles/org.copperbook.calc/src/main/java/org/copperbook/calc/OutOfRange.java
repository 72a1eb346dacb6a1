package org.copperbook.calc;

/**
 * A refusal: a value lies outside the range in which a formula holds.
 *
 * <p>The message names the quantity, the value, the range and the reason, and is fit to be shown to
 * the person who typed the value.
 */
public final class OutOfRange extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String quantity;
    private final String value;
    private final String range;
    private final String reason;

    /**
     * @param quantity what was given, in the trade's words ("winding temperature")
     * @param value the value refused, with its unit
     * @param range the range accepted, with its unit
     * @param reason why values outside that range are refused
     */
    public OutOfRange(String quantity, String value, String range, String reason) {
        super(quantity + " " + value + " is outside " + range + ": " + reason);
        this.quantity = quantity;
        this.value = value;
        this.range = range;
        this.reason = reason;
    }

    public String quantity() {
        return quantity;
    }

    public String value() {
        return value;
    }

    public String range() {
        return range;
    }

    public String reason() {
        return reason;
    }
}

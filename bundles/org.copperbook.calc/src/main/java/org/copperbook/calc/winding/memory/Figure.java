package org.copperbook.calc.winding.memory;

/**
 * A figure with the weight of its difference. A difference is the natural logarithm of the ratio, so that twice and
 * half are equally far. Weights are common practice without a source: poles and slots decide whether a winding can be
 * taken over at all, volts are changed easily.
 */
public enum Figure {
    /** Rated power. */
    RATING("rating", 1.0),
    /** Poles. */
    POLES("poles", 4.0),
    /** Slots. */
    SLOTS("slots", 4.0),
    /** Bore. */
    BORE("bore", 3.0),
    /** Core length. */
    LENGTH("core length", 2.0),
    /** Line voltage. */
    VOLTS("voltage", 0.7);

    private final String inWords;
    private final double weight;

    Figure(String inWords, double weight) {
        this.inWords = inWords;
        this.weight = weight;
    }

    /** @return name in the trade's words */
    public String inWords() {
        return inWords;
    }

    /** @return weight of a difference of one natural logarithm */
    public double weight() {
        return weight;
    }
}

package org.copperbook.calc.quantity;

import java.util.List;

/** What a text turned out to be. */
public sealed interface Parsed {

    /**
     * One quantity.
     *
     * @param quantity the value in SI
     * @param normalised the text as it is echoed back: "0,42 mohm" gives "0.42 mΩ"
     */
    record Value(Quantity quantity, String normalised) implements Parsed {
    }

    /**
     * More than one reading is possible, and the person who typed it must choose.
     *
     * @param readings the readings, normalised
     */
    record Ambiguous(List<Value> readings) implements Parsed {
    }

    /**
     * Not a quantity of the kind asked.
     *
     * @param problem what is wrong, for a text in the reader's language
     * @param detail the piece of text that is wrong
     * @param explanation the same in English
     */
    record Wrong(Problem problem, String detail, String explanation) implements Parsed {
    }

    /** What can be wrong. */
    enum Problem {
        EMPTY, NO_NUMBER, BAD_GROUPING, UNKNOWN_UNIT, OTHER_QUANTITY
    }
}

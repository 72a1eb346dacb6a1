package org.copperbook.calc.quantity;

/** The decimal mark of the reader's locale. It settles what the digits alone leave open. */
public enum DecimalMark {
    DOT('.'), COMMA(',');

    private final char sign;

    DecimalMark(char sign) {
        this.sign = sign;
    }

    /** The mark as written. */
    public char sign() {
        return sign;
    }
}

package org.copperbook.batch;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as they stand in plain output: a dot as decimal mark, no exponent, no trailing zeros. */
final class Figure {

    private static final int DIGITS = 6;

    private Figure() {
    }

    static String plain(double value) {
        return plain(value, DIGITS);
    }

    static String plain(double value, int digits) {
        BigDecimal d = new BigDecimal(value).round(new MathContext(digits));
        return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
    }
}

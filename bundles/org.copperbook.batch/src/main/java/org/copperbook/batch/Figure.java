package org.copperbook.batch;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as they stand in plain output: a dot as decimal mark, no exponent, no trailing zeros. */
final class Figure {

    private static final MathContext SIX_DIGITS = new MathContext(6);

    private Figure() {
    }

    static String plain(double value) {
        BigDecimal d = new BigDecimal(value).round(SIX_DIGITS);
        return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
    }
}

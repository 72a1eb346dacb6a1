package org.copperbook.calc.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Require;

/**
 * A currency and how its amounts are rounded.
 *
 * @param code three-letter code (ISO 4217)
 * @param digits decimals of an amount, 0 to 4
 * @param rounding how halves are rounded; HALF_UP agrees with the ROUND function of spreadsheets
 */
public record CurrencyRule(String code, int digits, RoundingMode rounding) {

    public CurrencyRule {
        Require.that(code != null && code.matches("[A-Z]{3}"), "currency", String.valueOf(code),
                "the three-letter codes", "amounts name their currency by its ISO 4217 code");
        Require.between("decimals of the currency", digits, 0, 4, "no currency in use has more");
    }

    /** The digits that ISO 4217 sets, halves rounded away from zero. */
    public static CurrencyRule of(String code) {
        try {
            int digits = Currency.getInstance(code).getDefaultFractionDigits();
            return new CurrencyRule(code, Math.max(digits, 0), RoundingMode.HALF_UP);
        } catch (IllegalArgumentException e) {
            throw new OutOfRange("currency", code, "the codes of ISO 4217", "the code is not known");
        }
    }

    /** The amount with the digits of the currency. */
    public BigDecimal round(BigDecimal amount) {
        return amount.setScale(digits, rounding);
    }
}

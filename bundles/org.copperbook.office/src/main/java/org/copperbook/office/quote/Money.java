package org.copperbook.office.quote;

import java.math.BigDecimal;
import java.text.NumberFormat;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.money.CurrencyRule;

/** Amounts of money as a page shows them, with the decimals of their own currency; more where the amount has more. */
final class Money {

    private Money() {
    }

    /** The amount alone. */
    static String alone(BigDecimal amount, CurrencyRule currency) {
        return format(amount, currency.digits());
    }

    /** The amount with its currency behind it, also where no such currency is known. */
    static String of(BigDecimal amount, String currency) {
        String code = currency == null ? "" : currency.strip();
        return (format(amount, digits(code)) + " " + code).strip();
    }

    private static int digits(String code) {
        try {
            return CurrencyRule.of(code).digits();
        } catch (OutOfRange unknown) {
            return 0;
        }
    }

    private static String format(BigDecimal amount, int digits) {
        NumberFormat money = NumberFormat.getInstance();
        money.setMinimumFractionDigits(digits);
        money.setMaximumFractionDigits(Math.max(digits, amount.stripTrailingZeros().scale()));
        return money.format(amount);
    }
}

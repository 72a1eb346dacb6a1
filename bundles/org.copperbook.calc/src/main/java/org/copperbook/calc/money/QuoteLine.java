package org.copperbook.calc.money;

import java.math.BigDecimal;

import org.copperbook.calc.Require;

/**
 * One line of a quote.
 *
 * @param quantity how many, in the line's measure; negative for a credit
 * @param unitPrice net price of one, in the quote's currency
 * @param discountPercent 0 to 100, taken off before rounding
 * @param tax the tax that applies
 * @param alternative the alternative the line belongs to, or null when it belongs to all
 */
public record QuoteLine(BigDecimal quantity, BigDecimal unitPrice, BigDecimal discountPercent, TaxKind tax,
        String alternative) {

    public QuoteLine {
        Require.between("discount", discountPercent.doubleValue(), 0, 100, "%", "no more than the whole can be let off");
    }

    /** The line's net amount, not rounded. */
    public BigDecimal exactNet() {
        BigDecimal kept = BigDecimal.valueOf(100).subtract(discountPercent).movePointLeft(2);
        return quantity.multiply(unitPrice).multiply(kept);
    }
}

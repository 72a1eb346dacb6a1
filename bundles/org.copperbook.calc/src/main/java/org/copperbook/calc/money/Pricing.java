package org.copperbook.calc.money;

import java.math.BigDecimal;
import java.math.MathContext;

import org.copperbook.calc.Require;

/**
 * Selling price from cost. A mark-up is a share of the cost, a margin a share of the price: 25 % mark-up is 20 % margin.
 * Unrounded; round by {@link CurrencyRule}. Definitions of commerce.
 */
public final class Pricing {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Pricing() {
    }

    /** cost x (1 + mark-up/100). */
    public static BigDecimal withMarkUp(BigDecimal cost, BigDecimal markUpPercent) {
        Require.between("mark-up", markUpPercent.doubleValue(), -100, 10_000, "%", "a price cannot be negative");
        return cost.multiply(BigDecimal.ONE.add(markUpPercent.divide(HUNDRED)));
    }

    /** cost / (1 - margin/100). */
    public static BigDecimal withMargin(BigDecimal cost, BigDecimal marginPercent) {
        Require.between("margin", marginPercent.doubleValue(), -10_000, 99.999, "%",
                "a margin is a share of the price and stays below the whole of it");
        return cost.divide(BigDecimal.ONE.subtract(marginPercent.divide(HUNDRED)), MathContext.DECIMAL64);
    }

    /** The margin, per cent of price, that a mark-up in per cent of cost gives. */
    public static BigDecimal marginOfMarkUp(BigDecimal markUpPercent) {
        return HUNDRED.multiply(markUpPercent).divide(HUNDRED.add(markUpPercent), MathContext.DECIMAL64);
    }

    /** The mark-up, per cent of cost, that a margin in per cent of price needs. */
    public static BigDecimal markUpOfMargin(BigDecimal marginPercent) {
        Require.between("margin", marginPercent.doubleValue(), -10_000, 99.999, "%",
                "a margin is a share of the price and stays below the whole of it");
        return HUNDRED.multiply(marginPercent).divide(HUNDRED.subtract(marginPercent), MathContext.DECIMAL64);
    }
}

package org.copperbook.calc.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.copperbook.calc.Require;

/**
 * The totals of a quote, or of one alternative of it.
 *
 * @param lines net amounts of the lines counted, in order, rounded to the currency
 * @param netBeforeDiscount sum of net amounts before the discount on the whole
 * @param discount amount let off the whole, not negative for a positive net
 * @param net net after discount
 * @param taxes tax by kind, rounded
 * @param gross net and taxes
 */
public record QuoteTotals(List<BigDecimal> lines, BigDecimal netBeforeDiscount, BigDecimal discount, BigDecimal net,
        Map<TaxKind, BigDecimal> taxes, BigDecimal gross) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * Adds up the lines that belong to all alternatives and to the one named. The discount on the whole is spread over
     * the tax kinds in proportion: each kind's net is reduced by its own rounded discount, so that the parts add up.
     *
     * @param alternative the alternative chosen, or null for lines that belong to all
     * @param discountPercent discount on the whole, 0 to 100
     */
    public static QuoteTotals of(List<QuoteLine> quote, String alternative, BigDecimal discountPercent,
            CurrencyRule currency, RoundingRule rule) {
        Require.between("discount", discountPercent.doubleValue(), 0, 100, "%", "no more than the whole can be let off");
        List<BigDecimal> lines = new ArrayList<>();
        Map<TaxKind, BigDecimal> byKind = new LinkedHashMap<>();
        for (QuoteLine line : quote) {
            if (line.alternative() != null && !Objects.equals(line.alternative(), alternative)) {
                continue;
            }
            BigDecimal rounded = currency.round(line.exactNet());
            lines.add(rounded);
            byKind.merge(line.tax(), rule == RoundingRule.LINES ? rounded : line.exactNet(), BigDecimal::add);
        }
        BigDecimal before = zero(currency);
        BigDecimal discount = zero(currency);
        BigDecimal tax = zero(currency);
        Map<TaxKind, BigDecimal> taxes = new LinkedHashMap<>();
        for (Map.Entry<TaxKind, BigDecimal> e : byKind.entrySet()) {
            BigDecimal net = currency.round(e.getValue());
            BigDecimal off = currency.round(percent(net, discountPercent));
            BigDecimal amount = currency.round(percent(net.subtract(off), e.getKey().percent()));
            before = before.add(net);
            discount = discount.add(off);
            tax = tax.add(amount);
            taxes.put(e.getKey(), amount);
        }
        BigDecimal net = before.subtract(discount);
        return new QuoteTotals(List.copyOf(lines), before, discount, net, Collections.unmodifiableMap(taxes), net.add(tax));
    }

    private static BigDecimal zero(CurrencyRule currency) {
        return currency.round(BigDecimal.ZERO);
    }

    private static BigDecimal percent(BigDecimal amount, BigDecimal percent) {
        return amount.multiply(percent).divide(HUNDRED);
    }
}

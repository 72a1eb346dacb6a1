package org.copperbook.calc.money;

import static org.copperbook.calc.quantity.Dimension.MONEY;
import static org.copperbook.calc.quantity.Dimension.RATIO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;

/** Prices and totals. */
public final class MoneyCalculations implements CalculationSource {

    private static final String AREA = "money";

    @Override
    public List<Calculation> calculations() {
        return List.of(price(), total());
    }

    private static Calculation price() {
        return Calculation.named(AREA, "selling-price")
                .title("Selling price from cost by mark-up or margin")
                .source("definitions of commerce: mark-up on cost, margin on price")
                .formula("cost (1 + mark-up); cost/(1 - margin)")
                .number("cost", MONEY, "", "cost")
                .number("mark-up", RATIO, "%", "", "mark-up on cost, or give the margin")
                .number("margin", RATIO, "%", "", "margin on price")
                .text("currency", "three letters", "EUR", "currency, for rounding")
                .gives("price", MONEY, "", "price, rounded to the currency")
                .gives("mark-up-percent", RATIO, "%", "mark-up on cost")
                .gives("margin-percent", RATIO, "%", "margin on price")
                .by((in, out) -> {
                    BigDecimal cost = decimal(in.number("cost"));
                    boolean markUp = in.firstGiven("mark-up", "margin").equals("mark-up");
                    BigDecimal share = decimal(100 * in.number(markUp ? "mark-up" : "margin"));
                    BigDecimal price = markUp ? Pricing.withMarkUp(cost, share) : Pricing.withMargin(cost, share);
                    BigDecimal other = markUp ? Pricing.marginOfMarkUp(share) : Pricing.markUpOfMargin(share);
                    out.put("price", CurrencyRule.of(in.text("currency")).round(price).doubleValue())
                            .put("mark-up-percent", (markUp ? share : other).doubleValue() / 100)
                            .put("margin-percent", (markUp ? other : share).doubleValue() / 100);
                });
    }

    private static Calculation total() {
        return Calculation.named(AREA, "quote-total")
                .title("Totals of lines with one tax and a discount")
                .source("arithmetic with the rounding rule stated")
                .formula("lines rounded, or totals only; discount; tax on the net")
                .points("lines", RATIO, "", MONEY, "", null, "quantity : unit price")
                .number("discount", RATIO, "%", "0", "discount on the whole")
                .number("tax", RATIO, "%", "0", "tax on the net")
                .choice("rounding", RoundingRule.class, "lines", "where amounts are rounded")
                .text("currency", "three letters", "EUR", "currency, for rounding")
                .gives("before-discount", MONEY, "", "net before discount")
                .gives("discount-amount", MONEY, "", "discount")
                .gives("net", MONEY, "", "net")
                .gives("tax-amount", MONEY, "", "tax")
                .gives("gross", MONEY, "", "gross")
                .by((in, out) -> {
                    TaxKind tax = new TaxKind("tax", decimal(100 * in.number("tax")));
                    List<QuoteLine> lines = new ArrayList<>();
                    for (double[] p : in.points("lines")) {
                        lines.add(new QuoteLine(decimal(p[0]), decimal(p[1]), BigDecimal.ZERO, tax, null));
                    }
                    QuoteTotals t = QuoteTotals.of(lines, null, decimal(100 * in.number("discount")),
                            CurrencyRule.of(in.text("currency")), in.choice("rounding", RoundingRule.class));
                    out.put("before-discount", t.netBeforeDiscount().doubleValue())
                            .put("discount-amount", t.discount().doubleValue()).put("net", t.net().doubleValue())
                            .put("tax-amount", t.gross().subtract(t.net()).doubleValue())
                            .put("gross", t.gross().doubleValue());
                });
    }

    /** The decimal that was typed: fifteen digits hold any amount of a workshop. */
    private static BigDecimal decimal(double value) {
        return new BigDecimal(value).round(new MathContext(15)).stripTrailingZeros();
    }
}

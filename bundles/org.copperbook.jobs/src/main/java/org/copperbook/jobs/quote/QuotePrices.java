package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.money.CurrencyRule;
import org.copperbook.calc.money.Pricing;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.calc.money.TaxKind;

/**
 * What a quote comes to, worked out in one place for pages, workbooks and the command line.
 *
 * <p>The price of a unit is its cost with the alternative's mark-up, rounded to the decimals of the currency or to
 * those of the cost where the cost has more (a price of 0.0345 per metre keeps four). Every later step multiplies this
 * rounded price, so that a customer can follow it with a pocket calculator.
 */
public final class QuotePrices {

    private final Quote quote;
    private final CurrencyRule currency;
    private final Map<String, TaxKind> taxes;

    /**
     * @throws UnpriceableQuoteException when the currency is unknown, or a tax is named twice or has no rate
     */
    public QuotePrices(Quote quote) {
        this.quote = quote;
        if (quote.currency() == null) {
            throw new UnpriceableQuoteException("the quote has no currency; enter its ISO 4217 code, like EUR", null);
        }
        try {
            this.currency = CurrencyRule.of(quote.currency());
            this.taxes = taxes(quote);
        } catch (OutOfRange e) {
            throw new UnpriceableQuoteException("the quote: " + e.getMessage(), e);
        }
    }

    private static Map<String, TaxKind> taxes(Quote quote) {
        Map<String, TaxKind> byCode = new HashMap<>();
        for (Quote.Tax tax : quote.taxes()) {
            if (tax.code() == null || tax.code().isBlank()) {
                throw new UnpriceableQuoteException("a tax of the quote has no code; give it a short one", null);
            }
            if (tax.ratePercent() == null) {
                throw new UnpriceableQuoteException("tax \"" + tax.code() + "\" has no rate; enter its percent", null);
            }
            if (byCode.put(tax.code(), new TaxKind(tax.code(), tax.ratePercent())) != null) {
                throw new UnpriceableQuoteException("tax code \"" + tax.code() + "\" stands twice in the quote", null);
            }
        }
        return byCode;
    }

    /** The currency with its decimals. */
    public CurrencyRule currency() {
        return currency;
    }

    /** Cost of the line's unit with the mark-up or the margin of its alternative, rounded as said above. */
    public BigDecimal unitPrice(Quote.Alternative alternative, QuoteLine line) {
        if (line.unitPrice() == null) {
            throw problem(alternative, line, "has no unit price; enter one, or 0 when it is free", null);
        }
        if (line.unitPrice().signum() < 0) {
            throw problem(alternative, line, "has a price below zero; for a credit give it an amount below zero", null);
        }
        try {
            return selling(alternative, line.unitPrice()).setScale(unitPriceDigits(line), currency.rounding());
        } catch (OutOfRange e) {
            throw problem(alternative, line, e.getMessage(), e);
        }
    }

    private static BigDecimal selling(Quote.Alternative alternative, BigDecimal cost) {
        if (alternative.marginPercent() == null) {
            return Pricing.withMarkUp(cost, percent(alternative.markUpPercent()));
        }
        if (alternative.markUpPercent() != null) {
            throw new UnpriceableQuoteException("alternative \"" + alternative.name()
                    + "\" has a mark-up and a margin; clear one of them", null);
        }
        return Pricing.withMargin(cost, alternative.marginPercent());
    }

    /** Decimals of the line's unit price. */
    public int unitPriceDigits(QuoteLine line) {
        return Math.max(currency.digits(), line.unitPrice().stripTrailingZeros().scale());
    }

    /** How many units; a line without a quantity is one lump. */
    public static BigDecimal quantity(QuoteLine line) {
        return line.quantity() == null ? BigDecimal.ONE : line.quantity();
    }

    /**
     * The totals of one alternative. Taxes in the result are named by their code; the empty name stands for lines
     * without tax.
     *
     * @throws UnpriceableQuoteException when a line has no price, names a tax the quote does not list, or a percentage
     *                                   lies outside its range; the message names alternative and line
     */
    public QuoteTotals totals(Quote.Alternative alternative) {
        List<org.copperbook.calc.money.QuoteLine> priced = new ArrayList<>();
        for (QuoteLine line : alternative.lines()) {
            TaxKind tax = taxOf(alternative, line);
            BigDecimal price = unitPrice(alternative, line);
            try {
                priced.add(new org.copperbook.calc.money.QuoteLine(quantity(line), price,
                        percent(line.discountPercent()), tax, null));
            } catch (OutOfRange e) {
                throw problem(alternative, line, e.getMessage(), e);
            }
        }
        try {
            return QuoteTotals.of(priced, null, percent(alternative.discountPercent()), currency, quote.rounding());
        } catch (OutOfRange e) {
            throw new UnpriceableQuoteException("alternative \"" + alternative.name() + "\": " + e.getMessage(), e);
        }
    }

    /** Whether an offer can go out as it stands: every alternative has lines, and all of them add up. */
    public static boolean isWhole(Quote quote) {
        try {
            QuotePrices prices = new QuotePrices(quote);
            quote.alternatives().forEach(prices::totals);
        } catch (UnpriceableQuoteException open) {
            return false;
        }
        return !quote.alternatives().isEmpty() && quote.alternatives().stream().noneMatch(a -> a.lines().isEmpty());
    }

    private TaxKind taxOf(Quote.Alternative alternative, QuoteLine line) {
        if (line.tax() == null || line.tax().isBlank()) {
            return new TaxKind("", BigDecimal.ZERO);
        }
        TaxKind tax = taxes.get(line.tax());
        if (tax == null) {
            throw problem(alternative, line, "names tax \"" + line.tax() + "\", which the quote does not list", null);
        }
        return tax;
    }

    private static UnpriceableQuoteException problem(Quote.Alternative alternative, QuoteLine line, String what,
            Throwable cause) {
        String text = line.text() == null || line.text().isBlank() ? "" : " (" + line.text().strip() + ")";
        return new UnpriceableQuoteException("alternative \"" + alternative.name() + "\", line "
                + (alternative.lines().indexOf(line) + 1) + text + ": " + what, cause);
    }

    private static BigDecimal percent(BigDecimal stated) {
        return stated == null ? BigDecimal.ZERO : stated;
    }
}

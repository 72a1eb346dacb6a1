package org.copperbook.jobs.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.Job;
import org.junit.jupiter.api.Test;

/** Expected amounts are decimal arithmetic by hand, written out beside each. */
class QuotePricesTest {

    private static QuoteLine line(String quantity, String price, String discount, String tax) {
        return new QuoteLine(QuoteLine.Kind.MATERIAL, "wire", null, quantity == null ? null : new BigDecimal(quantity),
                "kg", price == null ? null : new BigDecimal(price), discount == null ? null : new BigDecimal(discount),
                tax, Map.of());
    }

    private static Quote quote(String currency, String markUp, String discount, QuoteLine... lines) {
        Quote.Alternative a = new Quote.Alternative("full rewind", List.of(lines),
                markUp == null ? null : new BigDecimal(markUp), discount == null ? null : new BigDecimal(discount),
                null, Map.of());
        return new Quote(1, 1, null, null, currency, RoundingRule.LINES, "en", List.of(a),
                List.of(new Quote.Tax("V", "VAT", new BigDecimal("19"), Map.of())), null, null, null, Map.of());
    }

    private static QuoteTotals totals(Quote quote) {
        return new QuotePrices(quote).totals(quote.alternatives().get(0));
    }

    @Test
    void markUpIsPutOnTheUnitPriceAndRoundedBeforeItIsMultiplied() {
        // 12.34 x 1.15 = 14.191 -> 14.19; 10 x 14.19 = 141.90; 19 % of 141.90 = 26.961 -> 26.96; sum 168.86
        QuoteTotals t = totals(quote("EUR", "15", null, line("10", "12.34", null, "V")));
        assertEquals(new BigDecimal("141.90"), t.net());
        assertEquals(new BigDecimal("168.86"), t.gross());
    }

    private static Quote.Alternative alternative(String markUp, String margin, QuoteLine... lines) {
        return new Quote.Alternative("full rewind", List.of(lines), markUp == null ? null : new BigDecimal(markUp),
                margin == null ? null : new BigDecimal(margin), null, null, Map.of());
    }

    @Test
    void aMarginIsAShareOfThePriceAndNotOfTheCost() {
        // 70/(1 - 0.30) = 100.00; the same 30 as a mark-up gives 91.00
        QuotePrices prices = new QuotePrices(quote("EUR", null, null));
        QuoteLine line = line("1", "70", null, null);
        assertEquals(new BigDecimal("100.00"), prices.totals(alternative(null, "30", line)).net());
        assertEquals(new BigDecimal("91.00"), prices.totals(alternative("30", null, line)).net());
        assertThrows(UnpriceableQuoteException.class, () -> prices.totals(alternative("30", "30", line)));
        assertThrows(UnpriceableQuoteException.class, () -> prices.totals(alternative(null, "100", line)));
    }

    @Test
    void theFiguresOfAnAlternativeAreHoursCopperCostAndWhatIsEarned() {
        // cost 4 x 50 + 10 x 12 + 2 x 5 = 330; with 25 % 412.50; discount 10 % = 41.25, net 371.25
        // earned 41.25 = 12.5 % of 330 and 41.25/371.25 = 11.11 % of the net
        QuoteLine labour = new QuoteLine(QuoteLine.Kind.LABOUR, "wind", "winder", new BigDecimal("4"), "h",
                new BigDecimal("50"), null, null, Map.of());
        QuoteLine wire = new QuoteLine(QuoteLine.Kind.MATERIAL, "wire", null, BigDecimal.TEN, "kg", new BigDecimal("12"),
                null, null, "1.25 mm", Map.of());
        Quote.Alternative a = new Quote.Alternative("rewind", List.of(labour, wire, line("2", "5", null, null)),
                new BigDecimal("25"), BigDecimal.TEN, null, Map.of());
        QuoteFigures figures = QuoteFigures.of(new QuotePrices(quote("EUR", null, null)), a,
                new WireNamed(new Job("1", "2026-0001", Map.of())));
        assertEquals(new BigDecimal("4"), figures.hours());
        assertEquals(BigDecimal.TEN, figures.copperKg(), "varnish in kilograms is no copper");
        assertEquals(new BigDecimal("330.00"), figures.cost());
        assertEquals(new BigDecimal("371.25"), figures.totals().net());
        assertEquals(new BigDecimal("12.50"), figures.markUpReached().orElseThrow());
        assertEquals(new BigDecimal("11.11"), figures.marginReached().orElseThrow());
    }

    @Test
    void aPriceFinerThanTheCurrencyKeepsItsDecimals() {
        // 0.0345 x 1.15 = 0.039675 -> 0.0397; 1000 x 0.0397 = 39.70
        assertEquals(new BigDecimal("39.70"), totals(quote("EUR", "15", null, line("1000", "0.0345", null, null))).net());
    }

    @Test
    void aCurrencyWithoutDecimalsRoundsToTheUnit() {
        // 3 x 1250 = 3750, less 2.5 % = 3656.25 -> 3656; discount 10 % = 365.6 -> 366; 3290; tax 19 % = 625.1 -> 625
        QuoteTotals t = totals(quote("JPY", null, "10", line("3", "1250", "2.5", "V")));
        assertEquals(new BigDecimal("366"), t.discount());
        assertEquals(new BigDecimal("3915"), t.gross());
    }

    @Test
    void aLineWithoutQuantityIsOneLump() {
        assertEquals(new BigDecimal("250.000"), totals(quote("KWD", null, null, line(null, "250", null, null))).gross());
    }

    @Test
    void aLineThatCannotBePricedIsNamed() {
        UnpriceableQuoteException noPrice = assertThrows(UnpriceableQuoteException.class,
                () -> totals(quote("EUR", null, null, line("1", "2", null, null), line("1", null, null, null))));
        assertTrue(noPrice.getMessage().contains("\"full rewind\", line 2"), noPrice.getMessage());
        UnpriceableQuoteException noTax = assertThrows(UnpriceableQuoteException.class,
                () -> totals(quote("EUR", null, null, line("1", "2", null, "X"))));
        assertTrue(noTax.getMessage().contains("\"X\""), noTax.getMessage());
        assertThrows(UnpriceableQuoteException.class, () -> totals(quote("EUR", null, null, line("1", "2", "101", null))));
        assertThrows(UnpriceableQuoteException.class, () -> totals(quote("ZZZ9", null, null)));
    }

    @Test
    void anOfferIsWholeWhenEveryAlternativeHasLinesAndAllAddUp() {
        QuoteLine priced = line("1", "2", null, null);
        assertTrue(QuotePrices.isWhole(quote("EUR", null, null, priced)));
        assertTrue(QuotePrices.isWhole(quote("EUR", null, null, line("1", "0", null, null))), "free is a price");
        assertFalse(QuotePrices.isWhole(quote("EUR", null, null)), "an alternative without lines would be offered for nothing");
        assertFalse(QuotePrices.isWhole(quote("EUR", null, null, priced, line("1", null, null, null))));
        assertFalse(QuotePrices.isWhole(quote(null, null, null, priced)), "nobody knows in which money");
        Quote bare = new Quote(1, 1, null, null, "EUR", RoundingRule.LINES, "en", List.of(), List.of(), null, null, null, Map.of());
        assertFalse(QuotePrices.isWhole(bare));
    }

    @Test
    void aPriceBelowZeroIsRefusedInWordsAndACreditIsAnAmountBelowZero() {
        UnpriceableQuoteException e = assertThrows(UnpriceableQuoteException.class,
                () -> totals(quote("EUR", null, null, line("1", "-2", null, null))));
        assertTrue(e.getMessage().contains("line 1") && e.getMessage().contains("below zero"), e.getMessage());
        // 5 x 10 - 1 x 8 = 42
        assertEquals(new BigDecimal("42.00"), totals(quote("EUR", null, null, line("5", "10", null, null),
                line("-1", "8", null, null))).net());
    }
}

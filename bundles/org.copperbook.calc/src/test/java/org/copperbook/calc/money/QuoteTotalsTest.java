package org.copperbook.calc.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Totals against integer arithmetic in the smallest unit, written apart from the code. */
class QuoteTotalsTest {

    private static final TaxKind STANDARD = new TaxKind("standard", new BigDecimal("19"));
    private static final TaxKind EXEMPT = new TaxKind("exempt", BigDecimal.ZERO);
    private static final CurrencyRule EUR = CurrencyRule.of("EUR");

    private static QuoteLine line(String quantity, String price, TaxKind tax) {
        return new QuoteLine(new BigDecimal(quantity), new BigDecimal(price), BigDecimal.ZERO, tax, null);
    }

    @ParameterizedTest
    @ValueSource(longs = {91, 92, 93})
    void totalIsTheSumOfRoundedLines(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 300; run++) {
            List<QuoteLine> lines = new ArrayList<>();
            BigInteger cents = BigInteger.ZERO;
            for (int i = 0; i < 1 + random.nextInt(30); i++) {
                long thousandths = random.nextInt(50_000);
                long price = random.nextInt(1_000_000);
                lines.add(new QuoteLine(BigDecimal.valueOf(thousandths, 3), BigDecimal.valueOf(price, 2),
                        BigDecimal.ZERO, STANDARD, null));
                cents = cents.add(halfUp(BigInteger.valueOf(thousandths).multiply(BigInteger.valueOf(price)), 1000));
            }
            QuoteTotals t = QuoteTotals.of(lines, null, BigDecimal.ZERO, EUR, RoundingRule.LINES);
            assertEquals(new BigDecimal(cents, 2), t.net());
            assertEquals(t.net(), t.lines().stream().reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add));
            BigInteger tax = halfUp(cents.multiply(BigInteger.valueOf(19)), 100);
            assertEquals(new BigDecimal(cents.add(tax), 2), t.gross());
        }
    }

    private static BigInteger halfUp(BigInteger value, long divisor) {
        BigInteger d = BigInteger.valueOf(divisor);
        return value.multiply(BigInteger.TWO).add(d).divide(d.multiply(BigInteger.TWO));
    }

    @Test
    void theTwoRoundingRulesDiffer() {
        List<QuoteLine> lines = List.of(line("1", "0.004", EXEMPT), line("1", "0.004", EXEMPT),
                line("1", "0.004", EXEMPT));
        assertEquals(new BigDecimal("0.00"), QuoteTotals.of(lines, null, BigDecimal.ZERO, EUR, RoundingRule.LINES).gross());
        assertEquals(new BigDecimal("0.01"), QuoteTotals.of(lines, null, BigDecimal.ZERO, EUR, RoundingRule.TOTALS).gross());
    }

    @Test
    void discountIsTakenBeforeTaxAndByKind() {
        QuoteTotals t = QuoteTotals.of(List.of(line("2", "100", STANDARD), line("1", "50", EXEMPT)), null,
                new BigDecimal("10"), EUR, RoundingRule.LINES);
        assertEquals(new BigDecimal("250.00"), t.netBeforeDiscount());
        assertEquals(new BigDecimal("25.00"), t.discount());
        assertEquals(new BigDecimal("225.00"), t.net());
        assertEquals(new BigDecimal("34.20"), t.taxes().get(STANDARD));
        assertEquals(new BigDecimal("0.00"), t.taxes().get(EXEMPT));
        assertEquals(new BigDecimal("259.20"), t.gross());
    }

    @Test
    void lineDiscountAndCredits() {
        QuoteLine discounted = new QuoteLine(BigDecimal.ONE, new BigDecimal("99.99"), new BigDecimal("33"), EXEMPT, null);
        QuoteTotals t = QuoteTotals.of(List.of(discounted, line("-1", "10", EXEMPT)), null, BigDecimal.ZERO, EUR,
                RoundingRule.LINES);
        assertEquals(new BigDecimal("56.99"), t.gross());
    }

    @Test
    void alternativesShareTheCommonLines() {
        List<QuoteLine> lines = List.of(line("1", "100", EXEMPT),
                new QuoteLine(BigDecimal.ONE, new BigDecimal("400"), BigDecimal.ZERO, EXEMPT, "repair"),
                new QuoteLine(BigDecimal.ONE, new BigDecimal("900"), BigDecimal.ZERO, EXEMPT, "rewind"));
        assertEquals(new BigDecimal("500.00"),
                QuoteTotals.of(lines, "repair", BigDecimal.ZERO, EUR, RoundingRule.LINES).gross());
        assertEquals(new BigDecimal("1000.00"),
                QuoteTotals.of(lines, "rewind", BigDecimal.ZERO, EUR, RoundingRule.LINES).gross());
        assertEquals(new BigDecimal("100.00"),
                QuoteTotals.of(lines, null, BigDecimal.ZERO, EUR, RoundingRule.LINES).gross());
    }

    /** ISO 4217: the yen has no decimals, the Kuwaiti dinar three. */
    @ParameterizedTest
    @CsvSource({"EUR, 2", "JPY, 0", "KWD, 3"})
    void currenciesKeepTheirDigits(String code, int digits) {
        assertEquals(digits, CurrencyRule.of(code).digits());
    }

    @Test
    void halvesCanGoToEven() {
        CurrencyRule bankers = new CurrencyRule("EUR", 2, RoundingMode.HALF_EVEN);
        assertEquals(new BigDecimal("0.12"), bankers.round(new BigDecimal("0.125")));
        assertEquals(new BigDecimal("0.13"), EUR.round(new BigDecimal("0.125")));
    }

    /** Definition: 25 % on cost is 20 % of the price. */
    @Test
    void markUpIsNotMargin() {
        assertEquals(0, new BigDecimal("125").compareTo(Pricing.withMarkUp(new BigDecimal("100"), new BigDecimal("25"))));
        assertEquals(0, new BigDecimal("125").compareTo(Pricing.withMargin(new BigDecimal("100"), new BigDecimal("20"))));
        assertEquals(0, new BigDecimal("20").compareTo(Pricing.marginOfMarkUp(new BigDecimal("25"))));
        assertEquals(0, new BigDecimal("25").compareTo(Pricing.markUpOfMargin(new BigDecimal("20"))));
    }

    /** By definition m = mark-up/cost and margin = m/(1 + m); held against exact fractions of whole numbers. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void markUpAndMarginAreEachOthersInverse(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 500; run++) {
            BigDecimal markUp = BigDecimal.valueOf(random.nextInt(1_000_000) - 9_000, 2);
            BigDecimal margin = Pricing.marginOfMarkUp(markUp);
            BigDecimal m = markUp.movePointLeft(2);
            near(m, margin.movePointLeft(2).multiply(BigDecimal.ONE.add(m)));
            near(markUp, Pricing.markUpOfMargin(margin));
            BigDecimal cost = BigDecimal.valueOf(1 + random.nextInt(1_000_000), 2);
            near(Pricing.withMarkUp(cost, markUp), Pricing.withMargin(cost, margin));
        }
    }

    private static void near(BigDecimal expected, BigDecimal got) {
        assertEquals(0, expected.subtract(got).setScale(6, RoundingMode.HALF_UP).signum(), expected + " and " + got);
    }

    @Test
    void impossibleSharesAreRefused() {
        assertThrows(OutOfRange.class, () -> Pricing.withMargin(BigDecimal.TEN, new BigDecimal("100")));
        assertThrows(OutOfRange.class, () -> new TaxKind("x", new BigDecimal("-1")));
        OutOfRange refusal = assertThrows(OutOfRange.class, () -> CurrencyRule.of("XYZ"));
        assertTrue(refusal.getMessage().contains("XYZ"));
    }
}

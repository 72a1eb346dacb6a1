package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.copperbook.calc.money.QuoteTotals;

/**
 * What one alternative comes to, for comparing it with the others. Cost, mark-up and margin are the workshop's own and
 * no customer's.
 *
 * @param totals   what the customer reads
 * @param cost     cost of all lines, rounded to the currency; discounts do not lower it
 * @param hours    hours of labour
 * @param copperKg kilograms of winding wire
 */
public record QuoteFigures(QuoteTotals totals, BigDecimal cost, BigDecimal hours, BigDecimal copperKg) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int PERCENT_DIGITS = 2;

    /**
     * Adds an alternative up.
     *
     * @param wire knows the winding wire of the job
     * @throws UnpriceableQuoteException as {@link QuotePrices#totals}
     */
    public static QuoteFigures of(QuotePrices prices, Quote.Alternative alternative, WireNamed wire) {
        QuoteTotals totals = prices.totals(alternative);
        BigDecimal cost = BigDecimal.ZERO;
        for (QuoteLine line : alternative.lines()) {
            cost = cost.add(QuotePrices.quantity(line).multiply(line.unitPrice()));
        }
        return new QuoteFigures(totals, prices.currency().round(cost), hours(alternative), copperKg(alternative, wire));
    }

    /** Whether a line is labour by the hour: its unit is "h", or it names none, for the hour is the usual measure of labour. */
    public static boolean isHours(QuoteLine line) {
        String unit = line.unit() == null ? "" : line.unit().strip();
        return line.kind() == QuoteLine.Kind.LABOUR && (unit.isEmpty() || unit.equalsIgnoreCase("h"));
    }

    /** Hours of labour of an alternative, of lines by the hour. */
    public static BigDecimal hours(Quote.Alternative alternative) {
        return alternative.lines().stream().filter(QuoteFigures::isHours)
                .map(QuotePrices::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Kilograms of winding wire of an alternative. */
    public static BigDecimal copperKg(Quote.Alternative alternative, WireNamed wire) {
        return alternative.lines().stream().filter(wire::isKilograms)
                .map(QuotePrices::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Net less cost. */
    public BigDecimal earned() {
        return totals.net().subtract(cost);
    }

    /** What is earned in percent of the cost, after all discounts; empty where nothing costs. */
    public Optional<BigDecimal> markUpReached() {
        return share(cost);
    }

    /** What is earned in percent of the net price, after all discounts; empty where the price is nothing. */
    public Optional<BigDecimal> marginReached() {
        return share(totals.net());
    }

    private Optional<BigDecimal> share(BigDecimal of) {
        return of.signum() == 0 ? Optional.empty()
                : Optional.of(earned().multiply(HUNDRED).divide(of, PERCENT_DIGITS, RoundingMode.HALF_UP));
    }
}

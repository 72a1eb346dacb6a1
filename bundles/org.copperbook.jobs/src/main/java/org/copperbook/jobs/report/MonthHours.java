package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.shop.Capacities;

/**
 * Hours of a month trade by trade: what was worked, what was agreed to in it, and what could be worked.
 *
 * @param rows by trade
 */
public record MonthHours(List<Row> rows) {

    private static final BigDecimal WORKDAYS = BigDecimal.valueOf(5);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int TENTHS = 1;

    public MonthHours {
        rows = List.copyOf(rows);
    }

    /**
     * One trade.
     *
     * @param trade    as it was written first; empty where none was said
     * @param worked   hours written down in the month
     * @param agreed   hours in what customers agreed to in the month
     * @param capacity hours that the trade could work in the month; null when nobody has said
     */
    public record Row(String trade, BigDecimal worked, BigDecimal agreed, BigDecimal capacity) {

        /** Per cent of the capacity that was worked, to one decimal; nothing without a capacity. */
        public Optional<BigDecimal> percent() {
            return capacity == null || capacity.signum() == 0 ? Optional.empty()
                    : Optional.of(worked.multiply(HUNDRED).divide(capacity, TENTHS, RoundingMode.HALF_UP));
        }
    }

    /** The hours of a month; a trade with nothing but a capacity is left out of a month in which no trade did anything. */
    public static MonthHours of(MonthReport report, Capacities capacities) {
        Map<String, BigDecimal> worked = sums(report, MonthFact.Kind.WORKED);
        Map<String, BigDecimal> agreed = sums(report, MonthFact.Kind.HOURS);
        if (worked.isEmpty() && agreed.isEmpty()) {
            return new MonthHours(List.of());
        }
        Map<String, String> trades = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        worked.keySet().forEach(t -> trades.putIfAbsent(t, t));
        agreed.keySet().forEach(t -> trades.putIfAbsent(t, t));
        capacities.trades().stream().map(Capacities.OfTrade::trade).filter(t -> t != null && !t.isBlank())
                .forEach(t -> trades.putIfAbsent(t.strip(), t.strip()));
        List<Row> rows = new ArrayList<>();
        for (String trade : trades.values()) {
            rows.add(new Row(trade, worked.getOrDefault(trade, BigDecimal.ZERO), agreed.getOrDefault(trade, BigDecimal.ZERO),
                    capacity(report.month(), trade, capacities).orElse(null)));
        }
        rows.sort(Comparator.comparing(Row::trade, String.CASE_INSENSITIVE_ORDER));
        return new MonthHours(rows);
    }

    private static Map<String, BigDecimal> sums(MonthReport report, MonthFact.Kind kind) {
        Map<String, BigDecimal> sums = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        report.lines().stream().filter(l -> l.kind() == kind)
                .forEach(l -> sums.merge(l.what().strip(), l.amount(), BigDecimal::add));
        return sums;
    }

    /** A week at the month's edge counts with its days from Monday to Friday that lie in the month. */
    private static Optional<BigDecimal> capacity(YearMonth month, String trade, Capacities capacities) {
        if (trade.isEmpty() || capacities.of(trade).isEmpty()) {
            return Optional.empty();
        }
        BigDecimal sum = BigDecimal.ZERO;
        LocalDate monday = month.atDay(1).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        for (; !monday.isAfter(month.atEndOfMonth()); monday = monday.plusWeeks(1)) {
            LocalDate first = monday;
            long days = first.datesUntil(first.plusDays(WORKDAYS.longValue())).filter(d -> YearMonth.from(d).equals(month)).count();
            sum = sum.add(capacities.in(first, trade).orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(days)));
        }
        return Optional.of(sum.divide(WORKDAYS, TENTHS, RoundingMode.HALF_UP));
    }
}

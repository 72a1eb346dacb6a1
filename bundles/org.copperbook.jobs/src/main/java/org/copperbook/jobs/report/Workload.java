package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.copperbook.jobs.shop.Capacities;

/**
 * The work ahead of each trade against what it can do: hours agreed to, in the week in which they are promised. Hours
 * already overdue press on the first week. Hours that nobody has yet promised for a day are counted apart.
 *
 * @param monday first day of the first week
 * @param trades one line a trade, by name
 */
public record Workload(LocalDate monday, List<Line> trades) {

    private static final int THOUSANDTHS = 3;

    /**
     * Hours due.
     *
     * @param trade trade as the quote names it, may be empty
     * @param due   day promised, or null
     * @param hours thousandths of an hour
     */
    public record Due(String trade, LocalDate due, long hours) {
    }

    /**
     * One trade.
     *
     * @param trade    its name, empty for lines without a trade
     * @param capacity hours in a usual week; empty when nobody has said
     * @param able     hours it can work in each week; empty when nobody has said
     * @param overdue  hours promised before today
     * @param weeks    hours promised for each week; what is overdue is not among them
     * @param later    hours promised for after the last week
     * @param noDate   hours without a date
     */
    public record Line(String trade, Optional<BigDecimal> capacity, List<BigDecimal> able, BigDecimal overdue, List<BigDecimal> weeks,
            BigDecimal later, BigDecimal noDate) {

        /**
         * Hours by which the work due up to the end of a week is more than can be done until then: all overdue and due
         * hours, less the capacity of the weeks so far. Zero when it can be done, or when no capacity is known.
         *
         * @param week from 0
         */
        public BigDecimal over(int week) {
            if (capacity.isEmpty()) {
                return BigDecimal.ZERO;
            }
            BigDecimal due = weeks.subList(0, week + 1).stream().reduce(overdue, BigDecimal::add);
            BigDecimal can = able.subList(0, week + 1).stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            return due.subtract(can).max(BigDecimal.ZERO);
        }
    }

    /**
     * Adds the work up.
     *
     * @param today what is promised before it is overdue
     * @param weeks how many weeks to look ahead, the present one first; 1 or more
     */
    public static Workload of(List<Due> ahead, Capacities capacities, LocalDate today, int weeks) {
        LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        Map<String, long[]> sums = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (Due d : ahead) {
            long[] sum = sums.computeIfAbsent(d.trade().strip(), t -> new long[weeks + 3]);
            sum[place(d.due(), today, monday, weeks)] += d.hours();
        }
        TreeSet<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        names.addAll(sums.keySet());
        capacities.trades().stream().filter(t -> t.trade() != null).forEach(t -> names.add(t.trade().strip()));
        List<Line> lines = new ArrayList<>();
        for (String name : names) {
            long[] sum = sums.getOrDefault(name, new long[weeks + 3]);
            List<BigDecimal> each = new ArrayList<>();
            List<BigDecimal> able = new ArrayList<>();
            for (int i = 0; i < weeks; i++) {
                capacities.in(monday.plusWeeks(i), name).ifPresent(able::add);
                each.add(hours(sum[i]));
            }
            lines.add(new Line(name, capacities.of(name), List.copyOf(able), hours(sum[weeks]), List.copyOf(each), hours(sum[weeks + 1]),
                    hours(sum[weeks + 2])));
        }
        return new Workload(monday, List.copyOf(lines));
    }

    /** Place in the sums: the weeks, then overdue, later, and without a date. */
    private static int place(LocalDate due, LocalDate today, LocalDate monday, int weeks) {
        if (due == null) {
            return weeks + 2;
        }
        if (due.isBefore(today)) {
            return weeks;
        }
        long week = ChronoUnit.WEEKS.between(monday, due);
        return week >= weeks ? weeks + 1 : (int) week;
    }

    private static BigDecimal hours(long thousandths) {
        return BigDecimal.valueOf(thousandths, THOUSANDTHS).stripTrailingZeros();
    }
}

package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.work.Hours;

/** What the customer agreed to: the newest quote, its alternative, the hours in it. */
public final class AgreedQuote {

    private static final int THOUSANDTHS = 3;
    /** Digits before the point; more are a slip of the pen, and a thousand such amounts still have to add up. */
    private static final int MOST_DIGITS = 12;

    private AgreedQuote() {
    }

    /** The quote with the highest number. */
    static Optional<Quote> newest(Job job) {
        return job.keys(PartKind.QUOTE).stream().map(PartKey::name)
                .max(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                .map(name -> (Quote) job.parts().get(new PartKey(PartKind.QUOTE, name)));
    }

    /** The alternative agreed to: by its name, or the only one. */
    static Optional<Quote.Alternative> alternative(Quote q) {
        if (q.approval() == null || !Boolean.TRUE.equals(q.approval().agreed())) {
            return Optional.empty();
        }
        String name = q.approval().alternative();
        return name == null || name.isBlank()
                ? q.alternatives().stream().filter(a -> q.alternatives().size() == 1).findFirst()
                : q.alternatives().stream().filter(a -> name.equals(a.name())).findFirst();
    }

    /** Texts of the lines of outside work in what was agreed to, or, before that, in the newest quote. */
    public static List<String> outsideWork(Job job) {
        return newest(job).map(q -> alternative(q).map(List::of).orElse(q.alternatives())).orElse(List.of()).stream()
                .flatMap(a -> a.lines().stream())
                .filter(l -> l.kind() == QuoteLine.Kind.OUTSIDE_WORK && l.text() != null && !l.text().isBlank())
                .map(l -> l.text().strip()).distinct().toList();
    }

    /**
     * Hours of labour in what was agreed to, by trade, in thousandths of an hour; a line without a trade counts under an
     * empty one.
     */
    public static Map<String, Long> hours(Job job) {
        Map<String, Long> hours = new TreeMap<>();
        newest(job).flatMap(AgreedQuote::alternative).ifPresent(a -> a.lines().stream().filter(AgreedQuote::isHours)
                .forEach(line -> thousandths(line.quantity()).ifPresent(h -> hours.merge(trade(line), h, Long::sum))));
        return hours;
    }

    /**
     * The same less what was worked on it, by trade in any letter case; nothing is left of a trade that took more. Hours that
     * name no trade are not taken off any.
     */
    public static Map<String, Long> hoursLeft(Job job) {
        Map<String, Long> left = new TreeMap<>(hours(job));
        job.part(PartKind.HOURS, Hours.class).ifPresent(h -> h.byTrade().forEach((trade, worked) -> thousandths(worked)
                .ifPresent(w -> left.replaceAll((t, agreed) -> !trade.isEmpty() && t.equalsIgnoreCase(trade) ? agreed - w : agreed))));
        left.values().removeIf(h -> h <= 0);
        return left;
    }

    /** Whether a line is labour by the hour. */
    static boolean isHours(QuoteLine line) {
        return line.kind() == QuoteLine.Kind.LABOUR && line.quantity() != null && "h".equals(line.unit());
    }

    /** The trade of a line, empty when it names none. */
    static String trade(QuoteLine line) {
        return line.trade() == null ? "" : line.trade().strip();
    }

    /** An amount in thousandths; nothing when it is too large to be meant. */
    static Optional<Long> thousandths(BigDecimal amount) {
        if (amount.precision() - (long) amount.scale() > MOST_DIGITS) {
            return Optional.empty();
        }
        return Optional.of(amount.setScale(THOUSANDTHS, RoundingMode.HALF_EVEN).movePointRight(THOUSANDTHS)
                .longValueExact());
    }
}

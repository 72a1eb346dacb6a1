package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteFigures;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.work.Hours;

/**
 * What the customer agreed to: of each quote of the job that was agreed to, the alternative chosen. An offer for work found
 * later is a quote of its own, and agreeing to it does not take the first one back.
 */
public final class AgreedQuote {

    private static final int THOUSANDTHS = 3;
    /** Digits before the point; more are a slip of the pen, and a thousand such amounts still have to add up. */
    private static final int MOST_DIGITS = 12;

    /** What an agreement lacks, so that it is not known what was agreed to. */
    public enum Lack {
        /** There are several alternatives, and none is named. */
        NONE_NAMED,
        /** There is none of the name given. */
        UNKNOWN,
        /** More than one has the name given. */
        SEVERAL
    }

    private AgreedQuote() {
    }

    /** The quote with the highest number: the tenth comes after the ninth. */
    public static Optional<PartKey> newest(Job job) {
        return job.quoteKeys().stream().reduce((before, after) -> after);
    }

    private static boolean isAgreed(Quote q) {
        return q.approval() != null && Boolean.TRUE.equals(q.approval().agreed());
    }

    /**
     * Of the quotes that went to the customer, what was agreed to, and the newest, which stands for the earlier ones that nobody
     * agreed to.
     */
    static List<Quote> thatCount(Job job) {
        List<Quote> all = job.quotes().stream().filter(Quote::wentOut).toList();
        return IntStream.range(0, all.size()).filter(i -> i == all.size() - 1 || isAgreed(all.get(i))).mapToObj(all::get).toList();
    }

    private static List<Quote.Alternative> chosen(Quote q) {
        String name = q.approval().alternative();
        return name == null || name.isBlank() ? q.alternatives()
                : q.alternatives().stream().filter(a -> a.name() != null && name.strip().equals(a.name().strip())).toList();
    }

    /** Why it is not known which alternative was agreed to; nothing while nobody agreed, or where it is known. */
    public static Optional<Lack> lack(Quote q) {
        if (!isAgreed(q) || chosen(q).size() == 1) {
            return Optional.empty();
        }
        String name = q.approval().alternative();
        return Optional.of(name == null || name.isBlank() ? Lack.NONE_NAMED
                : chosen(q).isEmpty() ? Lack.UNKNOWN : Lack.SEVERAL);
    }

    /** The alternative agreed to: by its name, or the only one. */
    public static Optional<Quote.Alternative> alternative(Quote q) {
        return isAgreed(q) && lack(q).isEmpty() ? Optional.of(chosen(q).get(0)) : Optional.empty();
    }

    /** The lines of all that was agreed to. */
    static List<QuoteLine> lines(Job job) {
        return job.quotes().stream().map(AgreedQuote::alternative).flatMap(Optional::stream).flatMap(a -> a.lines().stream()).toList();
    }

    /** Texts of the lines of outside work in what was agreed to, or, before that, in the newest quote. */
    public static List<String> outsideWork(Job job) {
        List<QuoteLine> lines = lines(job);
        if (lines.isEmpty()) {
            lines = job.quotes().stream().reduce((before, after) -> after).map(Quote::alternatives).orElse(List.of()).stream()
                    .flatMap(a -> a.lines().stream()).toList();
        }
        return lines.stream()
                .filter(l -> l.kind() == QuoteLine.Kind.OUTSIDE_WORK && l.text() != null && !l.text().isBlank())
                .map(l -> l.text().strip()).distinct().toList();
    }

    /**
     * Hours of labour in what was agreed to, by trade in any letter case, in thousandths of an hour; a line without a trade
     * counts under an empty one.
     */
    public static Map<String, Long> hours(Job job) {
        Map<String, Long> hours = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        lines(job).stream().filter(AgreedQuote::isHours)
                .forEach(line -> thousandths(line.quantity()).ifPresent(h -> hours.merge(trade(line), h, Long::sum)));
        return hours;
    }

    /**
     * The same less what was worked on it; nothing is left of a trade that took more. Hours that name no trade are not taken
     * off any.
     */
    public static Map<String, Long> hoursLeft(Job job) {
        Map<String, Long> left = hours(job);
        job.part(PartKind.HOURS, Hours.class).ifPresent(h -> h.byTrade().forEach((trade, worked) -> thousandths(worked)
                .filter(w -> !trade.isEmpty()).ifPresent(w -> left.computeIfPresent(trade, (t, agreed) -> agreed - w))));
        left.values().removeIf(h -> h <= 0);
        return left;
    }

    /** Whether a line says how many hours. */
    static boolean isHours(QuoteLine line) {
        return line.quantity() != null && QuoteFigures.isHours(line);
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

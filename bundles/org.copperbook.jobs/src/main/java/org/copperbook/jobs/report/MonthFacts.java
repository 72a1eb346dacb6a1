package org.copperbook.jobs.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.quote.UnpriceableQuoteException;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.SurgeTest;
import org.copperbook.jobs.runup.WithstandTest;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.work.Hours;

/** What a job adds to the reports of which months. A void job adds nothing. */
public final class MonthFacts {

    private final List<MonthFact> facts = new ArrayList<>();
    private final Job job;
    private final Instant changed;
    private final ZoneId zone;

    private MonthFacts(Job job, Instant changed, ZoneId zone) {
        this.job = job;
        this.changed = changed;
        this.zone = zone;
    }

    /**
     * The facts of a job.
     *
     * @param changed when the job was last changed; the time of tests that carry none
     * @param zone    of the workshop, which decides the month of an instant
     */
    public static List<MonthFact> of(Job job, Instant changed, ZoneId zone) {
        MonthFacts of = new MonthFacts(job, changed, zone);
        if (!job.standing().map(Standing::isVoid).orElse(false)) {
            job.booking().ifPresent(of::booking);
            AgreedQuote.thatCount(job).forEach(of::quote);
            job.part(PartKind.HOURS, Hours.class).ifPresent(of::hours);
            job.runUp().ifPresent(of::runUp);
        }
        return List.copyOf(of.facts);
    }

    private void booking(Booking b) {
        if (b.bookedAt() != null) {
            add(month(b.bookedAt()), Kind.BOOKED, "", 0);
            if (b.earlierJob() != null && !b.earlierJob().isBlank()) {
                add(month(b.bookedAt()), Kind.RETURNED, "", 0);
            }
        }
        Optional<LocalDate> released = job.signOffs().flatMap(MonthFacts::releasedAt)
                .map(at -> LocalDate.ofInstant(at, zone));
        released.ifPresent(day -> {
            add(YearMonth.from(day), Kind.RELEASED, "", 0);
            if (b.promised() != null && day.isAfter(b.promised())) {
                add(YearMonth.from(day), Kind.LATE, "", 0);
            }
        });
        boolean closed = job.standing().map(Standing::closure).isPresent();
        if (released.isEmpty() && !closed && b.promised() != null) {
            add(YearMonth.from(b.promised()), Kind.OPEN, "", 0);
        }
    }

    /** When the record was released; nothing when the release was taken back after it. */
    private static Optional<Instant> releasedAt(SignOffs s) {
        Optional<Instant> signed = s.signatures().stream().filter(g -> g.point() == HoldPoint.RELEASE)
                .map(SignOffs.Signature::at).filter(Objects::nonNull).max(Instant::compareTo);
        Optional<Instant> reopened = s.reopenings().stream().filter(r -> r.point() == HoldPoint.RELEASE)
                .map(SignOffs.Reopening::at).filter(Objects::nonNull).max(Instant::compareTo);
        return signed.filter(at -> reopened.isEmpty() || at.isAfter(reopened.get()));
    }

    private void quote(Quote q) {
        if (q.alternatives().isEmpty()) {
            return;
        }
        Quote.Alternative first = q.alternatives().get(0);
        if (q.date() != null) {
            net(q, AgreedQuote.alternative(q).orElse(first)).ifPresent(n -> add(YearMonth.from(q.date()), Kind.QUOTED, q.currency(), n));
        }
        if (q.approval() == null || q.approval().at() == null || !Boolean.TRUE.equals(q.approval().agreed())) {
            return;
        }
        YearMonth month = month(q.approval().at());
        AgreedQuote.alternative(q).ifPresent(a -> {
            net(q, a).ifPresent(n -> add(month, Kind.APPROVED, q.currency(), n));
            for (QuoteLine line : a.lines()) {
                if (AgreedQuote.isHours(line)) {
                    AgreedQuote.thousandths(line.quantity())
                            .ifPresent(h -> add(month, Kind.HOURS, AgreedQuote.trade(line), h));
                }
            }
        });
    }

    /** Net total; nothing for a quote that cannot be priced as it stands. */
    private static Optional<Long> net(Quote q, Quote.Alternative a) {
        try {
            return AgreedQuote.thousandths(new QuotePrices(q).totals(a).net());
        } catch (UnpriceableQuoteException e) {
            return Optional.empty();
        }
    }

    /** One fact for each trade in each month. */
    private void hours(Hours worked) {
        Map<YearMonth, List<Hours.Entry>> months = worked.entries().stream()
                .filter(e -> e.date() != null && e.hours() != null)
                .collect(Collectors.groupingBy(e -> YearMonth.from(e.date()), TreeMap::new, Collectors.toList()));
        months.forEach((month, entries) -> new Hours(Hours.SCHEMA, entries, null, null).byTrade().forEach((trade, sum) ->
                AgreedQuote.thousandths(sum).filter(h -> h != 0).ifPresent(h -> add(month, Kind.WORKED, trade, h))));
    }

    private void runUp(RunUp r) {
        for (WithstandTest t : r.withstands()) {
            failed(t.held(), t.at(), "withstand");
        }
        for (SurgeTest t : r.surges()) {
            failed(t.alike(), t.at(), "surge");
        }
        if (r.overspeed() != null) {
            failed(r.overspeed().sound(), null, "overspeed");
        }
        failed(r.sequenceRight(), null, "phase-sequence");
    }

    private void failed(Boolean passed, Instant at, String test) {
        if (Boolean.FALSE.equals(passed)) {
            add(month(at == null ? changed : at), Kind.FAILED, test, 0);
        }
    }

    private YearMonth month(Instant at) {
        return YearMonth.from(LocalDate.ofInstant(at, zone));
    }

    private void add(YearMonth month, Kind kind, String what, long thousandths) {
        facts.add(new MonthFact(month, kind, what, thousandths));
    }
}

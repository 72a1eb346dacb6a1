package org.copperbook.sheets.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.signoff.SignOffs.Signature;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** The first sheet: which job, which machine, released or not, and how to read the rest. */
public final class CoverSheet implements RecordSheet {

    private static final int LABEL = 3;
    private static final int FEW = 3;

    @Override
    public void write(RecordContext c, Book book) {
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("cover.sheet"));
        SheetPage page = sheet.page();
        Workshop workshop = c.shop().workshop();
        page.row(Look.STRONG, Entry.text(workshop.name()).over(Sheet12.COLUMNS));
        page.paragraph(workshop.address());
        page.gap();
        release(c, page);
        page.pair(LABEL, c.say("cover.fingerprint"), c.seal().shown());
        page.gap();
        c.job().booking().ifPresent(b -> booking(c, page, b));
        c.job().nameplate().ifPresent(p -> page.pair(LABEL, c.say("cover.plate"), PlateLine.of(p, sheet.amounts(), c)));
        holdPoints(c, page);
        counts(c, page);
        reading(c, page);
        manyBlockers(c, page);
    }

    private static void booking(RecordContext c, SheetPage page, Booking b) {
        page.pair(LABEL, c.say("booking.customer"), b.customer());
        page.pair(LABEL, c.say("booking.order"), b.orderNo());
        page.pair(LABEL, c.say("booking.machine"), b.machine());
        page.pair(LABEL, c.say("booking.kind"), c.words().of(b.machineKind()));
        page.pair(LABEL, c.say("booking.at"), c.time(b.bookedAt()));
        page.pair(LABEL, c.say("booking.earlier"), b.earlierJob());
    }

    private static void release(RecordContext c, SheetPage page) {
        Optional<Standing.Closure> closure = c.job().standing().map(Standing::closure);
        closure.ifPresent(end -> page.warning(RecordContext.joined(": ",
                c.words().of(end.how()) + (end.into() == null ? "" : " " + end.into()), end.reason())
                + " " + c.say("cover.by", c.name(end.by()), c.time(end.at()))));
        HoldPointState state = c.holdPoints().stream().filter(h -> h.point() == HoldPoint.RELEASE).findFirst()
                .orElse(null);
        if (state != null && state.state() == State.SIGNED) {
            Signature s = last(c, HoldPoint.RELEASE);
            page.warning(s == null ? c.say("cover.released")
                    : c.say("cover.releasedBy", c.name(s.by()), c.words().of(s.role()), c.time(s.at())));
        } else if (state != null && state.state() == State.REOPENED) {
            page.warning(c.say(state.changed().isEmpty() ? "cover.reopened" : "cover.changed",
                    String.join(", ", state.changed())));
        } else {
            page.warning(c.say("cover.notReleased"));
        }
    }

    private static Signature last(RecordContext c, HoldPoint point) {
        return c.job().signOffs().map(SignOffs::signatures).orElse(List.of()).stream()
                .filter(s -> s.point() == point).reduce((a, b) -> b).orElse(null);
    }

    private static void holdPoints(RecordContext c, SheetPage page) {
        page.heading(c.say("cover.holdPoints"));
        Table table = new Table(page, 2, 2, 3, 5).head(c.say("hold.point"), c.say("hold.state"), c.say("hold.signed"),
                c.say("hold.blockers"));
        for (HoldPointState h : c.holdPoints()) {
            StringBuilder signed = new StringBuilder();
            for (Signature s : c.job().signOffs().map(SignOffs::signatures).orElse(List.of())) {
                if (s.point() == h.point()) {
                    signed.append(signed.length() == 0 ? "" : "\n").append(c.say("hold.by", c.name(s.by()),
                            c.words().of(s.role()), c.time(s.at())));
                }
            }
            String missing = h.toSign().isEmpty() || !h.applies() ? ""
                    : c.say("hold.toSign", String.join(", ", h.toSign()));
            table.texts(c.words().of(h.point()), h.applies() ? c.words().of(h.state()) : c.say("hold.none"),
                    signed.toString(), RecordContext.joined("\n", blockers(c, h), missing));
        }
    }

    /** A few blockers stand in the table; many are counted there and listed below. */
    private static String blockers(RecordContext c, HoldPointState h) {
        return h.blockers().size() <= FEW ? String.join("\n", h.blockers()) : c.say("hold.many", h.blockers().size());
    }

    private static void manyBlockers(RecordContext c, SheetPage page) {
        for (HoldPointState h : c.holdPoints()) {
            if (h.blockers().size() > FEW) {
                page.heading(c.say("hold.list", c.words().of(h.point())));
                h.blockers().forEach(b -> page.paragraph("• " + b));
            }
        }
    }

    private static void counts(RecordContext c, SheetPage page) {
        page.heading(c.say("cover.verdicts"));
        Map<Outcome, Long> counts = c.verdicts().counts();
        Table table = new Table(page, 2, 2, 3, 3, 2).head(c.words().of(Outcome.MEETS), c.words().of(Outcome.DOUBTFUL),
                c.words().of(Outcome.FAILS), c.words().of(Outcome.NOT_MEASURED), c.words().of(Outcome.NO_LIMIT_SET));
        table.row(count(counts, Outcome.MEETS), count(counts, Outcome.DOUBTFUL), count(counts, Outcome.FAILS),
                count(counts, Outcome.NOT_MEASURED), count(counts, Outcome.NO_LIMIT_SET));
    }

    private static Entry count(Map<Outcome, Long> counts, Outcome outcome) {
        return Entry.number(counts.get(outcome).intValue()).left();
    }

    private static void reading(RecordContext c, SheetPage page) {
        page.heading(c.say("cover.howToRead"));
        Workshop w = c.shop().workshop();
        page.paragraph(c.say("cover.temperature", Amounts.number(w.referenceCelsius(), 4),
                Amounts.number(w.copperConstant(), 4)));
        page.paragraph(c.say("cover.outcomes"));
        page.paragraph(c.say("cover.bar"));
        page.paragraph(c.say("cover.times", c.zone().getId()));
        page.paragraph(c.say("cover.cautions"));
    }
}

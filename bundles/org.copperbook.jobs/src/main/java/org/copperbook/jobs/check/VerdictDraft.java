package org.copperbook.jobs.check;

import java.time.Instant;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.signoff.HoldPoint;

/** A verdict while its check writes it down, step by step. */
final class VerdictDraft {

    private final String id;
    private final PartKey part;
    private final String title;
    private Outcome outcome = Outcome.NOT_MEASURED;
    private Double value;
    private Double expandedU;
    private Bounds bounds;
    private String unit = "";
    private String limitText = "";
    private String source = "";
    private String reason = "";
    private String settle = "";
    private String path = "";
    private boolean concedable = true;
    private HoldPoint point;
    private Instant takenAt;
    private boolean current = true;

    private VerdictDraft(String id, PartKey part, String title) {
        this.id = id;
        this.part = part;
        this.title = title;
    }

    static VerdictDraft of(String id, PartKey part, String title) {
        return new VerdictDraft(id, part, title);
    }

    VerdictDraft outcome(Outcome o) {
        outcome = o;
        return this;
    }

    VerdictDraft value(Double v, Double u, String inUnit) {
        value = v;
        expandedU = u;
        unit = inUnit;
        return this;
    }

    /** The limit with its bounds in words and its source. */
    VerdictDraft limit(LimitBook.Applied limit) {
        return limit(limit, limit.bounds());
    }

    /** The limit with bounds brought to the case at hand (another temperature, a share of a level). */
    VerdictDraft limit(LimitBook.Applied limit, Bounds here) {
        bounds = here;
        if (unit.isEmpty()) {
            unit = limit.unit();
        }
        limitText = here == null && limit.limit() != null && limit.limit().appliesTo() != null
                ? limit.limit().appliesTo() : Figures.bounds(here, unit);
        source = limit.source();
        return this;
    }

    /** Bounds that are no limit of the profile: the usual range of a figure. */
    VerdictDraft bounds(Bounds range) {
        bounds = range;
        return this;
    }

    VerdictDraft limitText(String text) {
        limitText = text;
        return this;
    }

    VerdictDraft source(String text) {
        source = text;
        return this;
    }

    VerdictDraft reason(String text) {
        reason = text;
        return this;
    }

    VerdictDraft addReason(String text) {
        if (!text.isEmpty()) {
            reason = reason.isEmpty() ? text : reason + " " + text;
        }
        return this;
    }

    VerdictDraft settle(String text) {
        settle = text;
        return this;
    }

    VerdictDraft path(String pointer) {
        path = pointer;
        return this;
    }

    VerdictDraft notConcedable() {
        concedable = false;
        return this;
    }

    VerdictDraft point(HoldPoint waitsForIt) {
        point = waitsForIt;
        return this;
    }

    VerdictDraft takenAt(Instant at) {
        takenAt = at;
        return this;
    }

    VerdictDraft current(boolean isCurrent) {
        current = isCurrent;
        return this;
    }

    Verdict done() {
        return new Verdict(id, part, title, outcome, value, expandedU, bounds, unit, limitText, source, reason, settle,
                path, concedable, point, takenAt, current);
    }
}

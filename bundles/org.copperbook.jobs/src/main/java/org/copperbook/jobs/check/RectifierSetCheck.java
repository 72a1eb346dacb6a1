package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.excitation.DiodeFinding;
import org.copperbook.calc.excitation.DiodeLimits;
import org.copperbook.calc.excitation.DiodeSet;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;
import org.copperbook.jobs.rectifier.DiodePosition.Plate;
import org.copperbook.jobs.rectifier.FittedSet;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The diode set as a whole: complete, changed together, right way round on its plates, fastened by its data sheet. */
final class RectifierSetCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.RECTIFIER);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.rectifier().ifPresent(set -> {
            LimitBook limits = new LimitBook(job, shop);
            out.add(positions(set));
            out.add(completeSet(set, limits));
            for (int i = 0; i < set.positions().size(); i++) {
                out.add(polarity(set.positions().get(i), i, limits));
            }
            if (set.fitted() != null) {
                for (int i = 0; i < set.positions().size(); i++) {
                    out.add(torque(set, i, limits, shop));
                }
            }
        });
        return out;
    }

    private static VerdictDraft draft(String id, String title) {
        return VerdictDraft.of(id, PART, title).point(HoldPoint.RECTIFIER_COMPLETE);
    }

    static String name(DiodePosition p, int index) {
        return p.position() == null || p.position().isBlank() ? Integer.toString(index + 1) : p.position();
    }

    private static String id(DiodePosition p, int index) {
        return name(p, index).toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /** As many positions as the circuit has diodes, each once, half of them on each plate of a full-wave bridge. */
    private static Verdict positions(RectifierSet set) {
        VerdictDraft d = draft("rectifier.positions", Phrases.say("title.positions")).path("/positions");
        if (set.circuit() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("positions.no-circuit")).done();
        }
        int wanted = set.circuit().diodes();
        d.limitText(Phrases.say("positions.limit", wanted)).source(Phrases.say("positions.source"));
        Set<String> names = new HashSet<>();
        int positive = 0;
        int negative = 0;
        for (int i = 0; i < set.positions().size(); i++) {
            DiodePosition p = set.positions().get(i);
            if (!names.add(id(p, i))) {
                return d.outcome(Outcome.FAILS).reason(Phrases.say("positions.twice", name(p, i))).done();
            }
            positive += p.plate() == Plate.POSITIVE ? 1 : 0;
            negative += p.plate() == Plate.NEGATIVE ? 1 : 0;
        }
        if (set.positions().size() != wanted) {
            return d.outcome(set.positions().size() < wanted ? Outcome.NOT_MEASURED : Outcome.FAILS)
                    .reason(Phrases.say("positions.count", set.positions().size(), wanted)).done();
        }
        if (positive + negative < wanted) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("positions.no-plate")).done();
        }
        boolean halves = set.circuit() != RectifierSet.Circuit.FULL_WAVE || positive == negative;
        return d.outcome(halves ? Outcome.MEETS : Outcome.FAILS)
                .reason(Phrases.say(halves ? "positions.right" : "positions.plates", wanted, positive, negative)).done();
    }

    private static Verdict completeSet(RectifierSet set, LimitBook limits) {
        LimitBook.Applied limit = limits.find("diode.complete-set");
        VerdictDraft d = draft("rectifier.complete-set", Phrases.say("title.complete-set")).limit(limit, null)
                .path(set.fitted() == null ? "/positions" : "/fitted").takenAt(fittedAt(set));
        if (limit.limit() == null || DiodeReadingCheck.unset(limits).isPresent()) {
            return d.outcome(Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("limit.missing", DiodeReadingCheck.unset(limits).orElse(limit.id())))
                    .settle(Phrases.say("settle.judgement")).done();
        }
        DiodeSet found = found(set, DiodeReadingCheck.limits(limits));
        if (set.fitted() == null) {
            return switch (found.outcome()) {
                case FAILS -> d.outcome(Outcome.FAILS).reason(Phrases.say("set.must-change", found.failed()))
                        .settle(Phrases.say("settle.change-set")).done();
                case MEETS -> d.outcome(Outcome.MEETS).reason(Phrases.say("set.all-good")).done();
                case DOUBTFUL -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("set.doubtful"))
                        .settle(Phrases.say("settle.lift")).done();
                default -> d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("set.not-read")).done();
            };
        }
        FittedSet fitted = set.fitted();
        if (fitted.complete() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("set.complete-not-said")).done();
        }
        if (fitted.complete()) {
            return d.outcome(Outcome.MEETS).reason(Phrases.say("set.complete")).done();
        }
        return d.outcome(Outcome.FAILS).reason(Phrases.say(found.failed() > 0 ? "set.mixed" : "set.mixed-unread"))
                .settle(Phrases.say("settle.change-set")).done();
    }

    private static DiodeSet found(RectifierSet set, DiodeLimits limits) {
        List<DiodeFinding> findings = new ArrayList<>();
        for (DiodePosition p : set.positions()) {
            try {
                findings.add(DiodeReadingCheck.finding(p, true, limits));
            } catch (OutOfRange e) {
                findings.add(new DiodeFinding(DiodeFinding.State.DOUBTFUL, DiodeFinding.State.DOUBTFUL,
                        DiodeFinding.Reason.BETWEEN_THE_LIMITS));
            }
        }
        return DiodeSet.judge(findings);
    }

    private static Instant fittedAt(RectifierSet set) {
        return set.fitted() == null ? null : set.fitted().at();
    }

    /** Cathode on the base where the plate is positive, anode where it is negative. */
    private static Verdict polarity(DiodePosition p, int index, LimitBook limits) {
        LimitBook.Applied limit = limits.find("diode.base-polarity");
        String name = name(p, index);
        VerdictDraft d = draft("diode." + id(p, index) + ".polarity", Phrases.say("title.polarity", name))
                .limit(limit, null).path("/positions/" + index + "/basePolarity").notConcedable();
        if (p.plate() == null || p.basePolarity() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("polarity.not-recorded", name)).done();
        }
        BasePolarity right = p.plate().base();
        boolean fits = p.basePolarity() == right;
        return d.outcome(limit.byRule(fits ? Outcome.MEETS : Outcome.FAILS))
                .reason(Phrases.say(fits ? "polarity.right" : "polarity.wrong", name,
                        Phrases.word("base", p.basePolarity()), Phrases.word("plate", p.plate()),
                        Phrases.word("base", right)))
                .settle(fits ? "" : Phrases.say("settle.polarity")).done();
    }

    private static Verdict torque(RectifierSet set, int index, LimitBook limits, Shop shop) {
        DiodePosition p = set.positions().get(index);
        FittedSet fitted = set.fitted();
        LimitBook.Applied rule = limits.find("rectifier.torque");
        VerdictDraft d = draft("diode." + id(p, index) + ".torque", Phrases.say("title.torque", name(p, index)))
                .path("/positions/" + index + "/torqueNm").takenAt(fitted.at());
        Bounds sheet = fitted.torqueMinNm() == null && fitted.torqueMaxNm() == null || crossed(fitted) ? rule.bounds()
                : new Bounds(fitted.torqueMinNm(), fitted.torqueMaxNm());
        String part = fitted.makersPart() == null ? "" : fitted.makersPart();
        if (sheet == null) {
            LimitBook.Applied hint = limits.find("rectifier.torque-hint." + StudThread.of(fitted.stud()));
            String usual = hint.isSet() ? Phrases.say("torque.hint", fitted.stud(),
                    Figures.bounds(hint.bounds(), "N m"), hint.source()) : "";
            return d.value(p.torqueNm(), null, "N m").outcome(Outcome.NO_LIMIT_SET)
                    .limitText(Phrases.say("limit.none")).source(rule.source())
                    .reason(Phrases.say("torque.no-sheet")).addReason(usual)
                    .settle(Phrases.say("settle.torque-sheet")).done();
        }
        d.limit(rule, sheet).limitText(Figures.bounds(sheet, "N m")).source(Phrases.say("torque.sheet", part));
        if (p.torqueNm() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("torque.not-recorded")).done();
        }
        MeterUse wrench = MeterUse.of(p.torqueNm(), "N m", fitted.wrench(), fitted.at(), shop);
        Ruling ruling = Ruling.on(wrench.value(), sheet, List.of(wrench));
        return d.value(p.torqueNm(), ruling.expandedU(), "N m").outcome(ruling.outcome())
                .reason(Phrases.say("torque." + ruling.word(),
                        Figures.show(p.torqueNm(), ruling.expandedU(), "N m"), Figures.bounds(sheet, "N m")))
                .addReason(ruling.objection()).settle(ruling.outcome() == Outcome.FAILS
                        ? Phrases.say("settle.torque") : ruling.settle(Phrases.say("settle.wrench"))).done();
    }

    private static boolean crossed(FittedSet f) {
        return f.torqueMinNm() != null && f.torqueMaxNm() != null && f.torqueMinNm() > f.torqueMaxNm();
    }
}

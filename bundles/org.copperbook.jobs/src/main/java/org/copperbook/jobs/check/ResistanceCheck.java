package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.resistance.Unbalance;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Winding resistance of each phase, section or field at the workshop's reference temperature, against the maker's limit
 * where there is one, and the unbalance between the phases.
 */
final class ResistanceCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            for (Reading.State state : Reading.State.values()) {
                ResistanceSet set = ResistanceSet.of(role, state, log, machine, limits, shop);
                if (!set.sections().isEmpty() || !set.pairs().isEmpty()) {
                    new OneSet(set, WindingOhms.of(set, machine), machine, limits, out).judge();
                }
            }
        }
        return out;
    }

    /** One winding in one state. */
    private record OneSet(ResistanceSet set, WindingOhms ohms, Machine machine, LimitBook limits, List<Verdict> out) {

        void judge() {
            Map<String, PhaseOhms> known = new LinkedHashMap<>();
            ohms.phases().forEach(p -> known.put(p.key(), p));
            set.sections().forEach((key, r) -> out.add(known.containsKey(key) ? value(known.get(key), "")
                    : withoutValue(key, r)));
            Map<String, PhaseOhms> lines = new LinkedHashMap<>();
            ohms.lines().forEach(p -> lines.put(p.key(), p));
            set.pairs().forEach((pair, r) -> {
                String key = WindingOhms.lineKey(pair);
                boolean makers = limits.find("resistance." + set.role().word() + ".line").isSet();
                if (!lines.containsKey(key)) {
                    out.add(withoutValue(key, r));
                } else if (makers || ohms.phases().isEmpty()) {
                    // where the phases are known they are judged instead of the lines, which mix two of them
                    out.add(value(lines.get(key), ".line"));
                }
            });
            triple();
            if (set.sections().isEmpty()) {
                ohms.phases().forEach(p -> out.add(value(p, "")));
            }
            if (!set.role().isField()) {
                unbalance();
            }
        }

        private String id(String what, String key) {
            return set.role().word() + "." + what + "." + Points.word(set.state()) + (key.isEmpty() ? "" : "." + key);
        }

        private String title(String key, String place) {
            return Phrases.say(key, Phrases.word("role", set.role()), place, Phrases.word("state", set.state()));
        }

        private Verdict value(PhaseOhms p, String kind) {
            LimitBook.Applied limit = limits.find("resistance." + set.role().word() + kind);
            if (!limit.isSet()) {
                List<PhaseOhms> alike = (p.like() == Like.LINE ? ohms.lines() : ohms.phases()).stream()
                        .filter(x -> x.like() == p.like()).toList();
                boolean comparable = !set.role().isField() && complete(alike, p.like())
                        && Peers.mean(alike).value() > 0;
                return comparable && unbalanceLimit().upper().isPresent() ? amongPeers(p, alike) : alone(p, limit);
            }
            Uncertain x = p.atReference().uncertain();
            Bounds here = MakersLimit.atReference(limit, machine);
            Ruling ruling = Ruling.on(x, here, p.meters());
            return resistance(p).value(x.value(), ruling.expandedU(), "ohm").limit(limit, here)
                    .limitText(limitText(limit, here)).outcome(ruling.outcome()).point(Points.of(set.state()))
                    .reason(Phrases.say("resistance." + ruling.word(),
                            Figures.show(x.value(), ruling.expandedU(), "ohm"), reference(),
                            Figures.bounds(here, "ohm")))
                    .addReason(p.remark()).addReason(ruling.objection()).settle(ruling.settle(doubt(p))).done();
        }

        private VerdictDraft resistance(PhaseOhms p) {
            return VerdictDraft.of(id("resistance", p.key()), p.part(), title("title.resistance", p.label()))
                    .path(p.path()).takenAt(p.at());
        }

        private String reference() {
            return Figures.show(machine.reference(), "degC");
        }

        /** Nothing to hold it against: the value is shown, and the comparison as left will use it. */
        private Verdict alone(PhaseOhms p, LimitBook.Applied limit) {
            Uncertain x = p.atReference().uncertain();
            Ruling ruling = Ruling.on(x, null, p.meters());
            return resistance(p).value(x.value(), ruling.expandedU(), "ohm").limit(limit, null)
                    .limitText(Phrases.say("limit.none")).outcome(Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("resistance.no-limit", Figures.show(x.value(), ruling.expandedU(), "ohm"),
                            reference()))
                    .addReason(p.remark()).addReason(ruling.objection()).settle(ruling.remedy()).done();
        }

        /** Without a maker's limit each phase is held against the middle of its like, so that the odd one stands out; the unbalance decides. */
        private Verdict amongPeers(PhaseOhms p, List<PhaseOhms> alike) {
            LimitBook.Applied limit = unbalanceLimit();
            double share = limit.upper().orElseThrow();
            Traced middle = Peers.middle(alike.stream().map(PhaseOhms::atReference).toList());
            Traced off = p.atReference().over(middle).plus(-1);
            List<MeterUse> meters = alike.stream().flatMap(x -> x.meters().stream()).toList();
            Ruling ruling = Ruling.on(off.uncertain(), Bounds.between(-share, share), meters);
            // The middle is one of the readings; beside itself it has no doubt, but its meter still has.
            Double u = ruling.expandedU() == null ? null
                    : Math.max(ruling.expandedU() * middle.value(), 2 * p.byMeterOnly().u());
            Bounds here = Bounds.between(middle.value() * (1 - share), middle.value() * (1 + share));
            return resistance(p).value(p.atReference().value(), u, "ohm").limit(limit, here).outcome(ruling.outcome())
                    .reason(Phrases.say("resistance.peers." + ruling.word(),
                            Figures.show(p.atReference().value(), "ohm"), reference(),
                            Figures.show(off.value(), ruling.expandedU(), "1"),
                            Figures.bounds(Bounds.between(-share, share), "1")))
                    .addReason(p.remark()).addReason(ruling.objection()).settle(ruling.settle(doubt(p))).done();
        }

        private String limitText(LimitBook.Applied limit, Bounds here) {
            Double at = limit.limit().atCelsius();
            if (at == null || at == machine.reference()) {
                return Figures.bounds(here, "ohm");
            }
            return Phrases.say("limit.at-temperature", Figures.bounds(limit.bounds(), "ohm"),
                    Figures.show(at, "degC"), Figures.bounds(here, "ohm"), Figures.show(machine.reference(), "degC"));
        }

        /** What would narrow the interval: the meter or the temperature, whichever weighs more. */
        private String doubt(PhaseOhms p) {
            double meter = p.byMeterOnly().u();
            double all = p.atReference().u();
            return Phrases.say(meter * meter * 2 >= all * all ? "settle.bridge" : "settle.soak");
        }

        private Verdict withoutValue(String key, OhmReading r) {
            Reading reading = r.logged().reading();
            Observed.Kind kind = r.kind();
            String label = reading.place().mark().isBlank() ? key : reading.place().mark();
            VerdictDraft d = VerdictDraft.of(id("resistance", key), r.logged().part(), title("title.resistance", label))
                    .limit(limits.find("resistance." + set.role().word())).path(r.logged().path())
                    .takenAt(reading.at()).point(Points.of(set.state()));
            String note = reading.note() == null ? "" : reading.note();
            if (kind == Observed.Kind.VALUE || kind == Observed.Kind.BELOW_RESOLUTION && r.meter() != null) {
                return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("ohm.not-corrected",
                        Figures.show(r.meter().value().value(), "ohm"), r.trouble()))
                        .settle(Phrases.say("settle.temperature")).done();
            }
            return switch (kind) {
                case ABOVE_RANGE -> d.outcome(Outcome.FAILS).reason(Phrases.say("ohm.above-range", label))
                        .settle(Phrases.say("settle.open")).done();
                case UNSTABLE -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("ohm.unstable", label))
                        .settle(Phrases.say("settle.unstable")).done();
                case BELOW_RESOLUTION -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("ohm.below-any", label))
                        .settle(Phrases.say("settle.bridge")).done();
                default -> d.outcome(Outcome.NOT_MEASURED)
                        .reason(Phrases.say("reading.not-possible", label, note)).done();
            };
        }

        /** Says what the three line readings mean together when it is not simply three sound phases. */
        private void triple() {
            if (set.pairs().isEmpty()) {
                return;
            }
            OhmReading first = set.pairs().values().iterator().next();
            VerdictDraft d = VerdictDraft.of(id("phases", ""), first.logged().part(), title("title.phases", ""))
                    .takenAt(ResistanceSet.latest(new ArrayList<>(set.pairs().values()))).path(first.logged().path())
                    .limitText(Phrases.say("limit.phases")).point(Points.of(set.state()));
            PhaseResult result = ohms.triple();
            if (result == null) {
                if (ohms.star() == null && set.sections().isEmpty()) {
                    out.add(d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("phases.no-connection"))
                            .settle(Phrases.say("settle.connection")).point(null).done());
                } else if (set.pairs().size() < 3 && set.sections().isEmpty()) {
                    out.add(d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("phases.incomplete")).done());
                }
                return;
            }
            if (result instanceof PhaseResult.Sound sound && sound.alsoPossible().isEmpty()) {
                return;
            }
            out.add(d.outcome(PhaseWords.surelyFaulty(result) ? Outcome.FAILS : Outcome.DOUBTFUL).reason(PhaseWords.of(result))
                    .settle(PhaseWords.settle(result)).done());
        }

        /** Like against like: phases, sections and lines each among themselves. */
        private void unbalance() {
            List<Like> classes = new ArrayList<>();
            for (Like like : List.of(Like.PHASE, Like.SECTION, Like.THROUGH)) {
                if (ohms.phases().stream().anyMatch(p -> p.like() == like)) {
                    classes.add(like);
                }
            }
            if (classes.isEmpty()) {
                out.add(unbalance(ohms.lines(), Like.LINE, ""));
            }
            for (int i = 0; i < classes.size(); i++) {
                Like like = classes.get(i);
                out.add(unbalance(ohms.phases().stream().filter(p -> p.like() == like).toList(), like,
                        i == 0 ? "" : like.name().toLowerCase(Locale.ROOT)));
            }
        }

        private LimitBook.Applied unbalanceLimit() {
            boolean form = machine.formWound(set.role()).orElse(false);
            return limits.find("resistance.unbalance." + (form ? "form" : "random"));
        }

        private Verdict unbalance(List<PhaseOhms> compared, Like like, String key) {
            LimitBook.Applied limit = unbalanceLimit();
            VerdictDraft d = VerdictDraft.of(id("unbalance", key), part(), title("title.unbalance", ""))
                    .point(Points.of(set.state())).takenAt(set.latest());
            if (!complete(compared, like)) {
                return d.limit(limit).outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                        .reason(Phrases.say("unbalance.incomplete")).done();
            }
            List<MeterUse> meters = compared.stream().flatMap(p -> p.meters().stream()).toList();
            try {
                Traced u = Unbalance.ofTraced(compared.stream().map(PhaseOhms::atReference).toList());
                Ruling ruling = Ruling.on(u.uncertain(), limit.bounds(), meters);
                PhaseOhms worst = Peers.worst(compared);
                return d.value(u.value(), ruling.expandedU(), "1").limit(limit).outcome(ruling.outcome())
                        .reason(Phrases.say("unbalance." + ruling.word(),
                                Figures.show(u.value(), ruling.expandedU(), "1"), worst.label(),
                                Figures.bounds(limit.bounds(), "1")))
                        .addReason(like == Like.LINE ? Phrases.say("unbalance.of-lines") : "")
                        .addReason(ruling.objection()).settle(ruling.settle(doubt(worst))).done();
            } catch (OutOfRange e) {
                return d.limit(limit).outcome(Outcome.DOUBTFUL).reason(e.getMessage())
                        .settle(Phrases.say("settle.repeat")).done();
            }
        }

        /** Whether all three phases are among those compared, and every reading of their kind gave a value. */
        private boolean complete(List<PhaseOhms> compared, Like like) {
            if (like == Like.LINE || set.sections().isEmpty()) {
                return compared.size() == 3;
            }
            Set<Integer> phases = new TreeSet<>();
            long read = set.sections().keySet().stream().filter(k -> set.like(k) == like).count();
            compared.forEach(p -> phases.add(set.phaseOf().getOrDefault(p.key(), -1)));
            return compared.size() == read && phases.containsAll(List.of(0, 1, 2));
        }

        private PartKey part() {
            OhmReading any = set.sections().isEmpty() ? set.pairs().values().iterator().next()
                    : set.sections().values().iterator().next();
            return any == null ? PartKey.of(PartKind.INSPECTION) : any.logged().part();
        }
    }

    static String word(Outcome outcome) {
        return outcome.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}

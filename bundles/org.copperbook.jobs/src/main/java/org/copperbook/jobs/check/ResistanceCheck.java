package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.resistance.TemperatureCorrection;
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
                out.add(lines.containsKey(key) ? value(lines.get(key), ".line") : withoutValue(key, r));
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
            Uncertain x = p.atReference().uncertain();
            Bounds here = atReference(limit);
            Ruling ruling = Ruling.on(x, here, p.meters());
            String shown = Figures.show(x.value(), ruling.expandedU(), "ohm");
            VerdictDraft d = VerdictDraft.of(id("resistance", p.key()), p.part(), title("title.resistance", p.label()))
                    .value(x.value(), ruling.expandedU(), "ohm").limit(limit, here).outcome(ruling.outcome())
                    .path(p.path()).takenAt(p.at());
            String at = Figures.show(machine.reference(), "degC");
            if (here == null) {
                d.reason(Phrases.say("resistance.no-limit", shown, at)).limitText(Phrases.say("limit.none"));
            } else {
                d.reason(Phrases.say("resistance." + word(ruling.outcome()), shown, at, Figures.bounds(here, "ohm")))
                        .limitText(limitText(limit, here)).point(Points.of(set.state()));
            }
            return d.addReason(p.remark()).addReason(ruling.objection())
                    .settle(ruling.settle(doubt(p))).done();
        }

        /** The maker's limit at the workshop's reference temperature. */
        private Bounds atReference(LimitBook.Applied limit) {
            if (!limit.isSet() || limit.limit().atCelsius() == null) {
                return limit.bounds();
            }
            double f = TemperatureCorrection.factor(machine.conductor(), limit.limit().atCelsius(),
                    machine.reference());
            Bounds b = limit.bounds();
            return new Bounds(b.lower() == null ? null : b.lower() * f, b.upper() == null ? null : b.upper() * f);
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
            boolean sure = result.alsoPossible().isEmpty() && !(result instanceof PhaseResult.Sound)
                    && !(result instanceof PhaseResult.Inconsistent);
            out.add(d.outcome(sure ? Outcome.FAILS : Outcome.DOUBTFUL).reason(PhaseWords.of(result))
                    .settle(PhaseWords.settle(result)).done());
        }

        private void unbalance() {
            List<PhaseOhms> compared = ohms.phases().size() >= 2 ? ohms.phases() : ohms.lines();
            boolean lines = compared == ohms.lines();
            boolean form = machine.formWound(set.role()).orElse(false);
            LimitBook.Applied limit = limits.find("resistance.unbalance." + (form ? "form" : "random"));
            VerdictDraft d = VerdictDraft.of(id("unbalance", ""), part(), title("title.unbalance", ""))
                    .point(Points.of(set.state())).takenAt(set.latest());
            if (!complete(compared, lines)) {
                out.add(d.limit(limit).outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                        .reason(Phrases.say("unbalance.incomplete")).done());
                return;
            }
            List<MeterUse> meters = compared.stream().flatMap(p -> p.meters().stream()).toList();
            try {
                Traced u = Unbalance.ofTraced(compared.stream().map(PhaseOhms::atReference).toList());
                Ruling ruling = Ruling.on(u.uncertain(), limit.bounds(), meters);
                PhaseOhms worst = worst(compared);
                out.add(d.value(u.value(), ruling.expandedU(), "1").limit(limit).outcome(ruling.outcome())
                        .reason(Phrases.say("unbalance." + word(ruling.outcome()),
                                Figures.show(u.value(), ruling.expandedU(), "1"), worst.label(),
                                Figures.bounds(limit.bounds(), "1")))
                        .addReason(lines ? Phrases.say("unbalance.of-lines") : "").addReason(ruling.objection())
                        .settle(ruling.settle(doubt(worst))).done());
            } catch (OutOfRange e) {
                out.add(d.limit(limit).outcome(Outcome.DOUBTFUL).reason(e.getMessage())
                        .settle(Phrases.say("settle.repeat")).done());
            }
        }

        private boolean complete(List<PhaseOhms> compared, boolean lines) {
            if (lines) {
                return compared.size() == 3;
            }
            if (set.sections().size() != compared.size() && !set.sections().isEmpty()) {
                return false;
            }
            return set.sections().isEmpty() ? compared.size() == 3
                    : new TreeSet<>(set.phaseOf().values()).size() == 3 || set.phaseOf().isEmpty();
        }

        private PartKey part() {
            OhmReading any = set.sections().isEmpty() ? set.pairs().values().iterator().next()
                    : set.sections().values().iterator().next();
            return any == null ? PartKey.of(PartKind.INSPECTION) : any.logged().part();
        }

        private static PhaseOhms worst(List<PhaseOhms> compared) {
            double mean = compared.stream().mapToDouble(p -> p.atReference().value()).average().orElse(0);
            PhaseOhms worst = compared.get(0);
            for (PhaseOhms p : compared) {
                if (Math.abs(p.atReference().value() - mean) > Math.abs(worst.atReference().value() - mean)) {
                    worst = p;
                }
            }
            return worst;
        }
    }

    static String word(Outcome outcome) {
        return outcome.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}

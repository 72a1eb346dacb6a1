package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Each coil group (or field pole) at the reference temperature against the middle value of its like. Groups of different size
 * are compared by resistance per turn when the turns of all are captured.
 */
final class CoilGroupCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            for (Reading.State state : Reading.State.values()) {
                ResistanceSet set = ResistanceSet.of(role, state, log, machine, limits, shop);
                if (!set.groups().isEmpty()) {
                    boolean left = state != Reading.State.AS_FOUND;
                    Optional<WindingData> data = left ? machine.windingAsLeft(role) : machine.windingAsFound(role);
                    judgeGroups(set, data, machine, limits, out);
                }
            }
        }
        return out;
    }

    private static void judgeGroups(ResistanceSet set, Optional<WindingData> data, Machine machine, LimitBook limits,
            List<Verdict> out) {
        List<PhaseOhms> groups = WindingOhms.groups(set, machine);
        Map<String, Integer> turns = turns(data);
        boolean byTurns = groups.stream().allMatch(g -> turns.getOrDefault(g.key(), 0) > 0);
        boolean field = set.role().isField();
        LimitBook.Applied limit = limits.find("resistance.unbalance." + (field ? "poles" : "groups"));
        Traced middle = Peers.middle(groups.stream().map(g -> g.atReference().times(1.0 / weight(g, turns, byTurns))).toList());
        for (PhaseOhms g : groups) {
            VerdictDraft d = draft(set, g.key(), g.label(), g).takenAt(g.at()).path(g.path());
            if (groups.size() < 2 || !(middle.value() > 0)) {
                out.add(d.value(g.atReference().value(), 2 * g.atReference().u(), "ohm").outcome(Outcome.NO_LIMIT_SET)
                        .limitText(Phrases.say("limit.none")).reason(Phrases.say("group.alone",
                                Figures.show(g.atReference().value(), "ohm"))).done());
                continue;
            }
            double w = weight(g, turns, byTurns);
            Traced wanted = middle.times(w);
            Traced deviation = g.atReference().over(wanted).plus(-1);
            Bounds band = limit.upper().map(u -> Bounds.between(-u, u)).orElse(null);
            Ruling ruling = Ruling.on(deviation.uncertain(), band, allMeters(groups));
            Bounds ohms = band == null ? null
                    : Bounds.between(wanted.value() * (1 + band.lower()), wanted.value() * (1 + band.upper()));
            double u = 2 * Math.max(deviation.u() * wanted.value(), g.byMeterOnly().u());
            out.add(d.value(g.atReference().value(), ruling.expandedU() == null ? null : u, "ohm").limit(limit, ohms)
                    .outcome(ruling.outcome()).point(Points.of(set.state()))
                    .reason(Phrases.say("group." + ruling.word(),
                            Figures.show(g.atReference().value(), "ohm"), Figures.show(machine.reference(), "degC"),
                            Figures.show(deviation.value(), ruling.expandedU(), "1"),
                            Figures.bounds(band, "1")))
                    .addReason(g.remark()).addReason(ruling.objection())
                    .settle(ruling.settle(Phrases.say("settle.bridge"))).done());
        }
        set.groups().forEach((number, r) -> {
            if (!r.usable()) {
                out.add(unusable(set, number, r));
            }
        });
    }

    private static VerdictDraft draft(ResistanceSet set, String key, String label, PhaseOhms g) {
        return VerdictDraft.of(set.role().word() + ".resistance." + Points.word(set.state()) + "." + key, g.part(),
                Phrases.say("title.resistance", Phrases.word("role", set.role()), label,
                        Phrases.word("state", set.state())));
    }

    private static Verdict unusable(ResistanceSet set, String number, OhmReading r) {
        String label = Phrases.say(set.role().isField() ? "place.pole" : "place.group", number);
        VerdictDraft d = VerdictDraft.of(set.role().word() + ".resistance." + Points.word(set.state()) + ".group-"
                + number, r.logged().part(), Phrases.say("title.resistance", Phrases.word("role", set.role()), label,
                        Phrases.word("state", set.state())))
                .path(r.logged().path()).takenAt(r.logged().reading().at()).point(Points.of(set.state()));
        if (r.meter() != null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("ohm.not-corrected",
                    Figures.show(r.meter().value().value(), "ohm"), r.trouble()))
                    .settle(Phrases.say("settle.temperature")).done();
        }
        if (r.kind() == Observed.Kind.ABOVE_RANGE) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("ohm.above-range", label))
                    .settle(Phrases.say("settle.open")).done();
        }
        boolean unstable = r.kind() == Observed.Kind.UNSTABLE;
        String note = r.logged().reading().note() == null ? "" : r.logged().reading().note();
        return d.outcome(unstable ? Outcome.DOUBTFUL : Outcome.NOT_MEASURED)
                .reason(unstable ? Phrases.say("ohm.unstable", label) : Phrases.say("reading.not-possible", label, note))
                .settle(unstable ? Phrases.say("settle.unstable") : "").done();
    }

    private static List<MeterUse> allMeters(List<PhaseOhms> groups) {
        return groups.stream().flatMap(g -> g.meters().stream()).toList();
    }

    private static double weight(PhaseOhms g, Map<String, Integer> turns, boolean byTurns) {
        return byTurns ? turns.get(g.key()) : 1;
    }

    /** Turns of each group: of its coils as captured, or coils times the regular turns. */
    private static Map<String, Integer> turns(Optional<WindingData> data) {
        Map<String, Integer> turns = new HashMap<>();
        if (data.isEmpty()) {
            return turns;
        }
        for (CoilGroup g : data.get().groups()) {
            int sum = 0;
            boolean all = !g.coils().isEmpty();
            for (CapturedCoil c : g.coils()) {
                Integer t = c.turns() == null ? data.get().turnsPerCoil() : c.turns();
                all &= t != null;
                sum += t == null ? 0 : t;
            }
            if (all) {
                turns.put("group-" + g.number(), sum);
            }
        }
        return turns;
    }
}

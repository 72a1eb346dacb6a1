package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.AsLeftComparison;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/** Resistance in process and as left against as found, per phase and per coil group, both at the reference temperature. */
final class LeftAgainstFoundCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            ResistanceSet found = ResistanceSet.of(role, Reading.State.AS_FOUND, log, machine, limits, shop);
            for (Reading.State state : List.of(Reading.State.IN_PROCESS, Reading.State.AS_LEFT)) {
                ResistanceSet left = ResistanceSet.of(role, state, log, machine, limits, shop);
                if (!left.isEmpty()) {
                    new OneWinding(found, left, machine, limits, out).judge();
                }
            }
        }
        return out;
    }

    private record OneWinding(ResistanceSet found, ResistanceSet left, Machine machine, LimitBook limits,
            List<Verdict> out) {

        void judge() {
            Map<String, PhaseOhms> was = byKey(found);
            Map<String, PhaseOhms> is = byKey(left);
            boolean anySound = is.keySet().stream().anyMatch(k -> was.containsKey(k) && soundAsFound(was, k));
            is.forEach((key, p) -> out.add(compare(was.get(key), p,
                    was.containsKey(key) && !soundAsFound(was, key), anySound)));
        }

        /** Phases where there are any, lines otherwise, and the groups. */
        private Map<String, PhaseOhms> byKey(ResistanceSet set) {
            Map<String, PhaseOhms> map = new LinkedHashMap<>();
            WindingOhms ohms = WindingOhms.of(set, machine);
            (ohms.phases().isEmpty() ? ohms.lines() : ohms.phases()).forEach(p -> map.put(p.key(), p));
            WindingOhms.groups(set, machine).forEach(p -> map.put(p.key(), p));
            return map;
        }

        /**
         * Whether a resistance as found can serve as a yardstick: it did not stand out from the middle of its like by more
         * than the unbalance allows, nor lie outside the maker's limit.
         */
        private boolean soundAsFound(Map<String, PhaseOhms> was, String key) {
            PhaseOhms p = was.get(key);
            LimitBook.Applied makers = limits.find("resistance." + left.role().word()
                    + (p.like() == Like.LINE ? ".line" : ""));
            if (makers.isSet() && p.like() != Like.GROUP) {
                return Ruling.on(p.atReference().uncertain(), MakersLimit.atReference(makers, machine),
                        List.of()).outcome() != Outcome.FAILS;
            }
            List<Traced> alike = was.values().stream().filter(x -> x.like() == p.like())
                    .map(PhaseOhms::atReference).toList();
            Traced middle = Peers.middle(alike);
            Optional<Double> allowed = limits.find("resistance.unbalance." + (p.like() == Like.GROUP
                    ? left.role().isField() ? "poles" : "groups" : "random")).upper();
            boolean standsOut = alike.size() > 2 && middle.value() > 0 && allowed.isPresent()
                    && Math.abs(p.atReference().value() / middle.value() - 1) > allowed.get();
            return !standsOut;
        }

        private Verdict compare(PhaseOhms was, PhaseOhms is, boolean faultyBefore, boolean anySound) {
            WindingRole role = left.role();
            LimitBook.Applied limit = limits.find("resistance.as-left-deviation");
            VerdictDraft d = VerdictDraft.of(role.word() + ".deviation." + Points.word(left.state()) + "." + is.key(),
                    is.part(), Phrases.say("title.deviation", Phrases.word("role", role), is.label(),
                            Phrases.word("state", left.state())))
                    .path(is.path()).takenAt(is.at());
            boolean rewound = machine.rewound().contains(role);
            if (was == null) {
                boolean makers = limits.find("resistance." + role.word()).isSet();
                return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                        .reason(Phrases.say("deviation.nothing-found"))
                        .settle(Phrases.say("settle.judgement"))
                        .point(rewound && !makers ? Points.of(left.state()) : null).done();
            }
            try {
                return compared(d, was, is, limit, rewound && faultyBefore, anySound);
            } catch (OutOfRange e) {
                return d.limit(limit).outcome(Outcome.DOUBTFUL).reason(e.getMessage())
                        .settle(Phrases.say("settle.repeat")).done();
            }
        }

        private Verdict compared(VerdictDraft d, PhaseOhms was, PhaseOhms is, LimitBook.Applied limit, boolean noYardstick,
                boolean anySound) {
            List<MeterUse> meters = new ArrayList<>(was.meters());
            meters.addAll(is.meters());
            double reference = machine.reference();
            AsLeftComparison c = AsLeftComparison.of(
                    new AsLeftComparison.Reading(was.byMeterOnly(), new Uncertain(reference, was.kelvinU())),
                    new AsLeftComparison.Reading(is.byMeterOnly(), new Uncertain(reference, is.kelvinU())), reference,
                    machine.conductor(), new SharedTerms(MeterUse.commonGain(meters), 0, 0, 0));
            Optional<Boolean> alike = machine.woundLikeFound(left.role());
            Ruling ruling = Ruling.on(c.deviation(), alike.orElse(true) && !noYardstick ? limit.bounds() : null, meters);
            String change = Figures.show(c.deviation().value(), ruling.expandedU(), "1");
            String from = Figures.show(c.foundAtReference().value(), "ohm");
            String to = Figures.show(c.leftAtReference().value(), "ohm");
            // a rewound winding is held to the maker's limit where there is one: what was found may have been the fault
            boolean informs = machine.rewound().contains(left.role())
                    && limits.find("resistance." + left.role().word()).isSet();
            d.value(c.deviation().value(), ruling.expandedU(), "1").point(informs ? null : Points.of(left.state()));
            if (!alike.orElse(true)) {
                return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                        .reason(Phrases.say("deviation.wound-otherwise", change, from, to))
                        .settle(Phrases.say("settle.judgement")).done();
            }
            if (noYardstick) {
                // the sound ones among its like are still held to what was found; only when there is none a word is needed
                return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                        .reason(Phrases.say("deviation.faulty-before", change, from, to))
                        .point(informs || anySound ? null : Points.of(left.state())).done();
            }
            return d.limit(limit).outcome(ruling.outcome())
                    .reason(Phrases.say("deviation." + ruling.word(), change, from, to,
                            Figures.show(reference, "degC"), Figures.bounds(limit.bounds(), "1")))
                    .addReason(ruling.objection()).settle(ruling.settle(Phrases.say("settle.same-meter"))).done();
        }
    }
}

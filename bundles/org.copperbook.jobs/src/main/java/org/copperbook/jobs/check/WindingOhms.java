package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.resistance.LineReading;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.resistance.PhaseValues;
import org.copperbook.calc.resistance.TerminalPair;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * What a set of resistance readings says about the phases of its winding.
 *
 * @param phases   resistance of each phase or section that could be computed
 * @param lines    resistance between line terminals that could be brought to the reference temperature
 * @param triple   what the three line readings say together; null when there are not three
 * @param star     how the phases are joined; null when not recorded
 */
record WindingOhms(List<PhaseOhms> phases, List<PhaseOhms> lines, PhaseResult triple, Boolean star) {

    static WindingOhms of(ResistanceSet set, Machine machine) {
        boolean asLeft = set.state() != org.copperbook.jobs.reading.Reading.State.AS_FOUND;
        Optional<Boolean> star = machine.star(set.role(), asLeft);
        List<PhaseOhms> phases = sections(set, machine);
        List<OhmReading> usable = set.pairs().values().stream().filter(OhmReading::usable).toList();
        TracedOhms traced = new TracedOhms(usable, machine);
        List<PhaseOhms> lines = new ArrayList<>();
        set.pairs().forEach((pair, r) -> {
            if (r.usable()) {
                lines.add(one(lineKey(pair), label(r), Like.LINE, r, traced));
            }
        });
        PhaseResult triple = star.map(s -> triple(set, s, machine)).orElse(null);
        if (phases.isEmpty() && triple instanceof PhaseResult.Sound && usable.size() == 3) {
            phases = fromLines(set, star.get(), traced);
        }
        return new WindingOhms(phases, List.copyOf(lines), triple, star.orElse(null));
    }

    static String lineKey(TerminalPair pair) {
        String n = pair.name().toLowerCase(Locale.ROOT);
        return n.charAt(0) + "-" + n.charAt(1);
    }

    private static List<PhaseOhms> sections(ResistanceSet set, Machine machine) {
        List<OhmReading> usable = set.sections().values().stream().filter(OhmReading::usable).toList();
        TracedOhms traced = new TracedOhms(usable, machine);
        List<PhaseOhms> out = new ArrayList<>();
        for (Map.Entry<String, OhmReading> e : set.sections().entrySet()) {
            if (e.getValue().usable()) {
                out.add(one(e.getKey(), label(e.getKey(), e.getValue()), set.like(e.getKey()), e.getValue(), traced));
            }
        }
        return out;
    }

    /** The groups of a set, at the reference temperature. */
    static List<PhaseOhms> groups(ResistanceSet set, Machine machine) {
        List<OhmReading> usable = set.groups().values().stream().filter(OhmReading::usable).toList();
        TracedOhms traced = new TracedOhms(usable, machine);
        List<PhaseOhms> out = new ArrayList<>();
        set.groups().forEach((number, r) -> {
            if (r.usable()) {
                String label = Phrases.say(set.role().isField() ? "place.pole" : "place.group", number);
                out.add(one("group-" + number, label, Like.GROUP, r, traced));
            }
        });
        return out;
    }

    private static PhaseOhms one(String key, String label, Like like, OhmReading r, TracedOhms traced) {
        return new PhaseOhms(key, label, like, traced.atReference(r), traced.byMeterOnly(r).uncertain(),
                traced.kelvinAtReference(r), List.of(r.meter()), r.logged().part(), r.logged().path(),
                r.logged().reading().at(), r.remark());
    }

    private static List<PhaseOhms> fromLines(ResistanceSet set, boolean star, TracedOhms traced) {
        List<OhmReading> r = new ArrayList<>();
        for (TerminalPair pair : TerminalPair.values()) {
            r.add(set.pairs().get(pair));
        }
        List<Traced> full = PhaseValues.soundPhases(star, traced.atReference(r.get(0)), traced.atReference(r.get(1)),
                traced.atReference(r.get(2)));
        List<Traced> meter = PhaseValues.soundPhases(star, traced.byMeterOnly(r.get(0)), traced.byMeterOnly(r.get(1)),
                traced.byMeterOnly(r.get(2)));
        List<MeterUse> meters = r.stream().map(OhmReading::meter).toList();
        List<PhaseOhms> out = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            String letter = "UVW".substring(i, i + 1);
            OhmReading beside = r.get(i);
            out.add(new PhaseOhms(letter.toLowerCase(Locale.ROOT), Phrases.say("place.phase", letter), Like.PHASE, full.get(i),
                    meter.get(i).uncertain(), traced.kelvinAtReference(beside), meters, beside.logged().part(),
                    beside.logged().path(), ResistanceSet.latest(r), beside.remark()));
        }
        return out;
    }

    /**
     * Classes the three line readings. Where every temperature is known they are compared at the reference temperature,
     * otherwise as read: an open line does not wait for a thermometer.
     */
    private static PhaseResult triple(ResistanceSet set, boolean star, Machine machine) {
        List<OhmReading> r = new ArrayList<>();
        for (TerminalPair pair : TerminalPair.values()) {
            r.add(set.pairs().get(pair));
        }
        if (r.contains(null)) {
            return null;
        }
        List<OhmReading> withValue = r.stream().filter(x -> x.meter() != null).toList();
        boolean corrected = withValue.stream().allMatch(OhmReading::usable);
        TracedOhms traced = corrected ? new TracedOhms(withValue, machine) : null;
        List<LineReading> lines = new ArrayList<>();
        for (OhmReading x : r) {
            Uncertain ohms = x.meter() == null ? null
                    : corrected ? traced.byMeterOnly(x).uncertain() : x.meter().value();
            LineReading line = x.asLine(ohms);
            if (line == null) {
                return null;
            }
            lines.add(line);
        }
        SharedTerms shared = new SharedTerms(MeterUse.commonGain(withValue.stream().map(OhmReading::meter).toList()),
                0, 0, 0);
        return star ? PhaseValues.star(lines.get(0), lines.get(1), lines.get(2), shared)
                : PhaseValues.delta(lines.get(0), lines.get(1), lines.get(2), shared);
    }

    private static String label(OhmReading r) {
        return r.logged().reading().place().mark();
    }

    private static String label(String key, OhmReading r) {
        String mark = label(r);
        boolean phase = r.logged().reading().place().kind() == org.copperbook.jobs.reading.Place.Kind.PHASE;
        if (phase) {
            return Phrases.say("place.phase", mark);
        }
        return mark.isBlank() ? key : mark;
    }
}

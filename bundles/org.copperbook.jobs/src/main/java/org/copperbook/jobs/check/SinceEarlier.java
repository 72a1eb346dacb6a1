package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.AsLeftComparison;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * A machine that came back: as it left on the earlier job beside as it was found today, resistances on the workshop's
 * reference temperature, insulation at 40 degrees Celsius, and what was changed on it meanwhile. Information, not a
 * verdict: it sets no limit.
 *
 * @param earlier number of the earlier job
 * @param rows    what was read then or today, by winding
 * @param changes differences of plate and winding between the two records, in words
 */
public record SinceEarlier(String earlier, List<Row> rows, List<String> changes) {

    /** Factor of the expanded uncertainty, about 95 % (JCGM 100:2008, 6.3.3). */
    private static final double COVERAGE = 2;
    private static final double ONE_MINUTE = 60;

    public SinceEarlier {
        rows = List.copyOf(rows);
        changes = List.copyOf(changes);
    }

    /** What a row is about. */
    public enum Kind { RESISTANCE, INSULATION }

    /**
     * One thing read.
     *
     * @param kind    resistance or insulation
     * @param role    winding
     * @param label   where, as people call it
     * @param then    as it left, in words, on the common temperature; "" when it was not read
     * @param today   as found today, in words; "" when it was not read yet
     * @param change  today over then, less one; null when one of them is no number
     * @param changeU expanded uncertainty of the change, about 95 %; null when there is none or it is not known
     * @param moved   whether the change is larger than its doubt, or one of the two shows no number where the other does
     * @param thenAt  when it was read then; null when not stated
     * @param todayAt when it was read today; null when not stated
     */
    public record Row(Kind kind, WindingRole role, String label, String then, String today, Double change,
            Double changeU, boolean moved, Instant thenAt, Instant todayAt) {

        /** The winding in words. */
        public String winding() {
            return Phrases.word("role", role);
        }

        /** The change in words; "" where there is none to state. */
        public String changeInWords() {
            if (change != null) {
                return Phrases.say(moved ? "since.moved" : "since.within", Figures.show(change, changeU, "1"));
            }
            return moved ? Phrases.say("since.no-number") : "";
        }
    }

    /** Compares today's job with an earlier one of the same machine. */
    public static SinceEarlier of(Job today, Job earlier, Shop shop) {
        List<Row> rows = new ArrayList<>();
        Side then = new Side(earlier, shop);
        Side now = new Side(today, shop);
        for (WindingRole role : WindingRole.values()) {
            resistances(role, then, now, rows);
            insulation(role, then, now, rows);
        }
        return new SinceEarlier(earlier.number(), rows, changes(today, earlier));
    }

    /** One of the two jobs, with what is needed to read it. */
    private record Side(Job job, Shop shop, Machine machine, LimitBook limits, ReadingLog log) {
        Side(Job job, Shop shop) {
            this(job, shop, new Machine(job, shop), new LimitBook(job, shop), new ReadingLog(job));
        }

        ResistanceSet ohms(WindingRole role, Reading.State state) {
            return ResistanceSet.of(role, state, log, machine, limits, shop);
        }

        /** The newest word on the winding when it left: after assembly, else before. */
        ResistanceSet left(WindingRole role) {
            ResistanceSet left = ohms(role, Reading.State.AS_LEFT);
            return left.isEmpty() ? ohms(role, Reading.State.IN_PROCESS) : left;
        }
    }

    private static void resistances(WindingRole role, Side then, Side now, List<Row> rows) {
        ResistanceSet was = then.left(role);
        ResistanceSet is = now.ohms(role, Reading.State.AS_FOUND);
        Map<String, PhaseOhms> before = usable(was, then.machine());
        Map<String, PhaseOhms> after = usable(is, now.machine());
        Map<String, OhmReading> read = raw(was);
        Map<String, OhmReading> readNow = raw(is);
        Set<String> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        keys.addAll(read.keySet());
        keys.addAll(readNow.keySet());
        for (String key : keys) {
            PhaseOhms a = before.get(key);
            PhaseOhms b = after.get(key);
            rows.add(a != null && b != null ? compared(role, a, b, now.machine())
                    : oneSided(role, key, a, b, read.get(key), readNow.get(key)));
        }
    }

    private static Map<String, PhaseOhms> usable(ResistanceSet set, Machine machine) {
        Map<String, PhaseOhms> map = new LinkedHashMap<>();
        WindingOhms ohms = WindingOhms.of(set, machine);
        ohms.phases().forEach(p -> map.put(p.key(), p));
        ohms.lines().forEach(p -> map.put(p.key(), p));
        WindingOhms.groups(set, machine).forEach(p -> map.put(p.key(), p));
        return map;
    }

    private static Map<String, OhmReading> raw(ResistanceSet set) {
        Map<String, OhmReading> map = new LinkedHashMap<>(set.sections());
        set.pairs().forEach((pair, r) -> map.put(WindingOhms.lineKey(pair), r));
        set.groups().forEach((number, r) -> map.put("group-" + number, r));
        return map;
    }

    private static Row compared(WindingRole role, PhaseOhms was, PhaseOhms is, Machine machine) {
        double reference = machine.reference();
        AsLeftComparison c;
        try {
            c = AsLeftComparison.of(
                    new AsLeftComparison.Reading(was.byMeterOnly(), new Uncertain(reference, was.kelvinU())),
                    new AsLeftComparison.Reading(is.byMeterOnly(), new Uncertain(reference, is.kelvinU())), reference,
                    machine.conductor());
        } catch (OutOfRange e) {
            return new Row(Kind.RESISTANCE, role, is.label(), ohms(was), ohms(is), null, null, true, was.at(), is.at());
        }
        double u = COVERAGE * c.deviation().u();
        return new Row(Kind.RESISTANCE, role, is.label(), ohms(was), ohms(is), c.deviation().value(), u,
                Math.abs(c.deviation().value()) > u, was.at(), is.at());
    }

    private static String ohms(PhaseOhms p) {
        return Figures.show(p.atReference().value(), "ohm");
    }

    private static Row oneSided(WindingRole role, String key, PhaseOhms a, PhaseOhms b, OhmReading was, OhmReading is) {
        String then = a != null ? ohms(a) : said(was);
        String today = b != null ? ohms(b) : said(is);
        String label = a != null ? a.label() : b != null ? b.label() : mark(was, is, key);
        boolean moved = !then.isEmpty() && !today.isEmpty() && (a == null) != (b == null);
        return new Row(Kind.RESISTANCE, role, label, then, today, null, null, moved, at(was, a), at(is, b));
    }

    private static Instant at(OhmReading raw, PhaseOhms p) {
        return p != null ? p.at() : raw == null ? null : raw.logged().reading().at();
    }

    private static String mark(OhmReading was, OhmReading is, String key) {
        String mark = (is != null ? is : was).logged().reading().place().mark();
        return mark == null || mark.isBlank() ? key : mark;
    }

    /** What the instrument said where no number at the reference temperature can be had. */
    private static String said(OhmReading r) {
        if (r == null) {
            return "";
        }
        var seen = r.logged().reading().observed();
        return seen.isValue() ? Phrases.say("since.as-read", Figures.show(seen.value(), "ohm"), r.trouble())
                : Phrases.word("since.observed", seen.kind());
    }

    private static void insulation(WindingRole role, Side then, Side now, List<Row> rows) {
        Map<String, OhmsToEarth> was = toEarth(role, then, Reading.State.AS_LEFT);
        if (was.isEmpty()) {
            was = toEarth(role, then, Reading.State.IN_PROCESS);
        }
        Map<String, OhmsToEarth> is = toEarth(role, now, Reading.State.AS_FOUND);
        Set<String> places = new LinkedHashSet<>(was.keySet());
        places.addAll(is.keySet());
        for (String place : places) {
            OhmsToEarth a = was.get(place);
            OhmsToEarth b = is.get(place);
            rows.add(new Row(Kind.INSULATION, role, place.isEmpty() ? Phrases.say("place.to-earth") : place,
                    at40(a, then, role, true), at40(b, now, role, false), null, null, false,
                    a == null ? null : a.logged().reading().at(), b == null ? null : b.logged().reading().at()));
        }
    }

    /** The newest one-minute reading of each place. */
    private static Map<String, OhmsToEarth> toEarth(WindingRole role, Side side, Reading.State state) {
        Map<String, OhmsToEarth> map = new LinkedHashMap<>();
        for (LoggedReading l : side.log().of(role, ReadingQuantity.INSULATION_RESISTANCE, state)) {
            Reading r = l.reading();
            boolean minute = r.afterSeconds() == null || Math.abs(r.afterSeconds() / ONE_MINUTE - 1) <= 0.1;
            if (r.observed() != null && minute) {
                map.put(r.place().mark().strip(), OhmsToEarth.of(l, side.machine().kelvinU(r.temperatureU()), side.shop()));
            }
        }
        return map;
    }

    private static String at40(OhmsToEarth at, Side side, WindingRole role, boolean asLeft) {
        if (at == null) {
            return "";
        }
        InsulationAt40 hot = InsulationAt40.of(at, side.machine().thermalClass(role, asLeft));
        if (hot.isEmpty()) {
            return at.meter() == null ? Phrases.word("since.observed", at.logged().reading().observed().kind())
                    : Phrases.say("since.as-read", Figures.show(at.meter().value().value(), "ohm"), hot.trouble());
        }
        String value = Figures.show(hot.lowest(), "ohm");
        return at.atLeast() ? Phrases.say("since.more-than", value) : value;
    }

    private static List<String> changes(Job today, Job earlier) {
        List<String> changes = new ArrayList<>();
        Optional<Nameplate> was = earlier.nameplate();
        Optional<Nameplate> is = today.nameplate();
        if (was.isPresent() && is.isPresent()) {
            Differences plate = new Differences(Phrases.say("sealed.nameplate"), changes);
            plate.text("serial", was.get().serial(), is.get().serial());
            plate.text("voltage", was.get().voltageV(), is.get().voltageV());
            plate.text("frequency", was.get().frequencyHz(), is.get().frequencyHz());
            plate.text("apparent-power", was.get().apparentPowerVA(), is.get().apparentPowerVA());
            plate.text("power", was.get().powerW(), is.get().powerW());
            plate.text("connection", was.get().connection(), is.get().connection());
        }
        for (WindingRole role : WindingRole.values()) {
            Optional<WindingData> left = earlier.windingAsWound(role).or(() -> earlier.windingAsFound(role));
            Optional<WindingData> found = today.windingAsFound(role);
            if (left.isPresent() && found.isPresent()) {
                winding(new Differences(Phrases.word("role", role), changes), left.get(), found.get());
            }
        }
        return changes;
    }

    private static void winding(Differences d, WindingData was, WindingData is) {
        d.text("slots", was.slots(), is.slots());
        d.text("poles", was.poles(), is.poles());
        d.text("turns", was.turnsPerCoil(), is.turnsPerCoil());
        d.text("circuits", was.circuits(), is.circuits());
        d.text("coils", was.coilCount(), is.coilCount());
        d.text("span", was.span(), is.span());
        d.text("connection", was.connection(), is.connection());
        d.text("wire", sizes(was), sizes(is));
    }

    private static String sizes(WindingData w) {
        return w.wire().isEmpty() ? null : String.join(", ", w.wire().stream()
                .map(x -> x.strands() + " x " + x.size()).sorted().toList());
    }

    /** Collects what two records say differently; what one of them does not say is no difference. */
    private record Differences(String where, List<String> into) {
        void text(String what, Object was, Object is) {
            if (was != null && is != null && !Objects.equals(was, is)) {
                into.add(Phrases.say("since.differs", where, Phrases.say("since." + what), plain(was), plain(is)));
            }
        }

        private static String plain(Object o) {
            return o instanceof Double d ? Figures.number(d, 6) : o instanceof Enum<?> e
                    ? e.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') : o.toString();
        }
    }
}

package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.calc.resistance.TerminalPair;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * The resistance readings of one winding in one state, sorted by what they were taken across; of several readings of one
 * thing the newest.
 *
 * @param role     winding
 * @param state    as found, in process or as left
 * @param sections readings across a phase, a part of a phase or a whole field, by key ("u", "u1-u2", "whole")
 * @param phaseOf  phase (0, 1, 2) of each section that belongs to one
 * @param pairs    readings between line terminals
 * @param groups   readings across a coil group or pole, by its number
 */
record ResistanceSet(WindingRole role, Reading.State state, Map<String, OhmReading> sections,
        Map<String, Integer> phaseOf, Map<TerminalPair, OhmReading> pairs, Map<String, OhmReading> groups) {

    private static final String WHOLE = "whole";

    static ResistanceSet of(WindingRole role, Reading.State state, ReadingLog log, Machine machine, LimitBook limits,
            Shop shop) {
        ResistanceSet set = new ResistanceSet(role, state, new TreeMap<>(), new TreeMap<>(),
                new EnumMap<>(TerminalPair.class), new TreeMap<>(ResistanceSet::byNumber));
        for (LoggedReading l : log.of(role, ReadingQuantity.RESISTANCE, state)) {
            if (l.reading().observed() != null) {
                set.put(OhmReading.of(l, machine, limits, shop));
            }
        }
        return set;
    }

    private static int byNumber(String a, String b) {
        return a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
    }

    private void put(OhmReading r) {
        Place place = r.logged().reading().place();
        String mark = place.mark().strip();
        switch (place.kind()) {
            case COIL_GROUP -> keep(groups, mark.toLowerCase(Locale.ROOT), r);
            case PHASE -> {
                String key = mark.toLowerCase(Locale.ROOT);
                keep(sections, key, r);
                int phase = "uvw".indexOf(key.isEmpty() ? '?' : key.charAt(0));
                if (phase >= 0) {
                    phaseOf.put(key, phase);
                }
            }
            case WHOLE -> keep(sections, WHOLE, r);
            case TERMINAL_PAIR -> putPair(mark, r);
            default -> {
                // a resistance to earth or between phases is no winding resistance
            }
        }
    }

    private void putPair(String mark, OhmReading r) {
        if (role.isField()) {
            keep(sections, WHOLE, r);
            return;
        }
        Optional<TerminalMark> terminals = TerminalMark.parse(mark);
        if (terminals.isEmpty()) {
            keep(sections, mark.isEmpty() ? WHOLE : mark.toLowerCase(Locale.ROOT).replace(' ', '-'), r);
            return;
        }
        TerminalMark t = terminals.get();
        if (t.pair() != null) {
            keep(pairs, t.pair(), r);
            return;
        }
        keep(sections, t.key(), r);
        if (t.phase() != null) {
            phaseOf.put(t.key(), t.phase());
        }
    }

    private static <K> void keep(Map<K, OhmReading> map, K key, OhmReading r) {
        OhmReading before = map.get(key);
        if (before == null || !time(r).isBefore(time(before))) {
            map.put(key, r);
        }
    }

    private static Instant time(OhmReading r) {
        Instant at = r.logged().reading().at();
        return at == null ? Instant.MIN : at;
    }

    /** What a section was read across, by its key. */
    Like like(String key) {
        OhmReading r = sections.get(key);
        if (r.logged().reading().place().kind() == Place.Kind.PHASE) {
            return Like.PHASE;
        }
        return TerminalMark.parse(r.logged().reading().place().mark()).filter(t -> t.phase() != null && !role.isField())
                .map(TerminalMark::like).orElse(Like.WHOLE);
    }

    boolean isEmpty() {
        return sections.isEmpty() && pairs.isEmpty() && groups.isEmpty();
    }

    /** The newest time among all its readings; null when none states one. */
    Instant latest() {
        List<OhmReading> all = new ArrayList<>(sections.values());
        all.addAll(pairs.values());
        return latest(all);
    }

    static Instant latest(List<OhmReading> readings) {
        return readings.stream().map(r -> r.logged().reading().at()).filter(Objects::nonNull)
                .max(Instant::compareTo).orElse(null);
    }
}

package org.copperbook.sheets.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/** The winding resistances of a job that still stand, by winding, place and state; the newest of each counts. */
final class StandingReadings {

    /** A reading with the part and the place in it where it stands. */
    record Standing(PartKey part, String pointer, Reading reading) {
    }

    /** What is compared: the place as printed, with the reading as found and as left, either of which may be missing. */
    record Pair(String label, Standing found, Standing left) {
    }

    private final Map<WindingRole, Map<String, Pair>> pairs = new LinkedHashMap<>();

    StandingReadings(Job job) {
        job.inspection().ifPresent(i -> readings(PartKey.of(PartKind.INSPECTION), i.readings(), null, true));
        for (PartKey key : job.keys(PartKind.WINDING)) {
            WindingData w = (WindingData) job.part(key).orElseThrow();
            readings(key, w.readings(), w.role(), !w.asWound());
            for (int i = 0; i < w.groups().size(); i++) {
                group(key, i, w.groups().get(i), w.role(), !w.asWound());
            }
        }
        job.runUp().ifPresent(r -> readings(PartKey.of(PartKind.RUN_UP), r.readings(), null, false));
    }

    Set<WindingRole> windings() {
        return pairs.keySet();
    }

    List<Pair> of(WindingRole role) {
        return new ArrayList<>(pairs.getOrDefault(role, Map.of()).values());
    }

    private void readings(PartKey part, List<Reading> readings, WindingRole role, boolean found) {
        Set<String> superseded = new HashSet<>();
        readings.forEach(r -> superseded.add(r.supersedes()));
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            WindingRole of = r.place() == null || r.place().winding() == null ? role : r.place().winding();
            if (r.quantity() == ReadingQuantity.RESISTANCE && of != null && r.place() != null
                    && (r.id() == null || !superseded.contains(r.id()))) {
                put(of, key(r.place()), r.place().mark().isBlank() ? "" : r.place().mark(),
                        new Standing(part, "/readings/" + i, r), found);
            }
        }
    }

    private void group(PartKey part, int index, CoilGroup g, WindingRole role, boolean found) {
        if (g.resistance() != null) {
            put(role, "group " + g.number(), "#" + g.number() + (g.phase() == null ? "" : " " + g.phase()),
                    new Standing(part, "/groups/" + index + "/resistance", g.resistance()), found);
        }
    }

    private static String key(Place place) {
        String mark = place.mark().strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
        return place.kind() == Place.Kind.COIL_GROUP ? "group " + mark : mark;
    }

    private void put(WindingRole role, String key, String label, Standing s, boolean foundByPlace) {
        boolean found = s.reading().state() == null ? foundByPlace : s.reading().state() == Reading.State.AS_FOUND;
        pairs.computeIfAbsent(role, r -> new LinkedHashMap<>()).merge(key,
                found ? new Pair(label, s, null) : new Pair(label, null, s), (was, is) -> new Pair(was.label(),
                        newer(was.found(), is.found()), newer(was.left(), is.left())));
    }

    private static Standing newer(Standing a, Standing b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return time(b).isBefore(time(a)) ? a : b;
    }

    private static Instant time(Standing s) {
        return s.reading().at() == null ? Instant.MIN : s.reading().at();
    }
}

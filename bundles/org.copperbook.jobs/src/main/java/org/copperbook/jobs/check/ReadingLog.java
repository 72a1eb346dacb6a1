package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Every reading of a job that still stands, wherever it was entered. Superseded readings stay in their parts and are
 * left out here; of several readings of one thing the newest counts.
 */
final class ReadingLog {

    private final List<LoggedReading> all = new ArrayList<>();

    ReadingLog(Job job) {
        job.inspection().ifPresent(i -> add(PartKey.of(PartKind.INSPECTION), i.readings(), "/readings/",
                Reading.State.AS_FOUND, null));
        for (PartKey key : job.keys(PartKind.WINDING)) {
            Part part = job.part(key).orElseThrow();
            addWinding(key, (WindingData) part);
        }
        job.inProcess().ifPresent(p -> add(PartKey.of(PartKind.IN_PROCESS), p.readings(), "/readings/",
                Reading.State.IN_PROCESS, null));
        job.runUp().ifPresent(r -> add(PartKey.of(PartKind.RUN_UP), r.readings(), "/readings/",
                Reading.State.AS_LEFT, null));
    }

    private void addWinding(PartKey key, WindingData winding) {
        Reading.State state = winding.asWound() ? Reading.State.IN_PROCESS : Reading.State.AS_FOUND;
        add(key, winding.readings(), "/readings/", state, winding.role());
        for (int i = 0; i < winding.groups().size(); i++) {
            CoilGroup group = winding.groups().get(i);
            Reading r = group.resistance();
            if (r != null) {
                Place place = Place.of(winding.role(), Place.Kind.COIL_GROUP, Integer.toString(group.number()));
                all.add(new LoggedReading(key, "/groups/" + i + "/resistance",
                        placed(r, place, ReadingQuantity.RESISTANCE), r.state() == null ? state : r.state()));
            }
        }
    }

    private void add(PartKey key, List<Reading> readings, String pointer, Reading.State state, WindingRole role) {
        Set<String> superseded = new HashSet<>();
        for (Reading r : readings) {
            if (r.supersedes() != null) {
                superseded.add(r.supersedes());
            }
        }
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            if (r.id() != null && superseded.contains(r.id())) {
                continue;
            }
            Reading known = r;
            if (r.place() != null && r.place().winding() == null && role != null) {
                known = placed(r, Place.of(role, r.place().kind(), r.place().mark()), r.quantity());
            }
            all.add(new LoggedReading(key, pointer + i, known, r.state() == null ? state : r.state()));
        }
    }

    private static Reading placed(Reading r, Place place, ReadingQuantity quantity) {
        return new Reading(r.id(), quantity, place, r.observed(), r.isolated(), r.windingCelsius(), r.temperatureU(),
                r.temperatureHow(), r.ambientCelsius(), r.humidityPercent(), r.instrument(), r.method(), r.testVolts(),
                r.afterSeconds(), r.by(), r.at(), r.state(), r.supersedes(), r.reason(), r.note(), r.more());
    }

    /** Readings that still stand. */
    List<LoggedReading> all() {
        return all;
    }

    /** Readings of one quantity on one winding in one state, in the order in which they were entered. */
    List<LoggedReading> of(WindingRole role, ReadingQuantity quantity, Reading.State state) {
        return all.stream().filter(l -> l.reading().quantity() == quantity && l.state() == state
                && l.reading().place() != null && l.reading().place().winding() == role).toList();
    }

    /** The newest of some readings that passes a test; where times are missing or equal, the last one entered. */
    static Optional<LoggedReading> newest(List<LoggedReading> readings, Predicate<LoggedReading> test) {
        LoggedReading newest = null;
        for (LoggedReading l : readings) {
            if (test.test(l) && (newest == null || !time(l).isBefore(time(newest)))) {
                newest = l;
            }
        }
        return Optional.ofNullable(newest);
    }

    /** The latest time among some readings; null when none states one. */
    static Instant latest(List<LoggedReading> readings) {
        return readings.stream().map(l -> l.reading().at()).filter(java.util.Objects::nonNull)
                .max(Comparator.naturalOrder()).orElse(null);
    }

    private static Instant time(LoggedReading l) {
        return l.reading().at() == null ? Instant.MIN : l.reading().at();
    }
}

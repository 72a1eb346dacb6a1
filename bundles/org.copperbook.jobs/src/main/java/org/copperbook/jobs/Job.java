package org.copperbook.jobs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.process.ProcessTests;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * A job as it stands: its number and the current revision of each of its parts.
 *
 * @param id     key that never changes (a UUID)
 * @param number the job number people use, e.g. "2026-0042"
 * @param parts  current parts by key, in the order of a job's life
 */
public record Job(String id, String number, Map<PartKey, Part> parts) {

    public Job {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(number, "number");
        parts = Collections.unmodifiableMap(new TreeMap<>(parts));
    }

    /** The part under a key, if the job has it. */
    public Optional<Part> part(PartKey key) {
        return Optional.ofNullable(parts.get(key));
    }

    /** The part of a kind that a job has once. */
    public <T extends Part> Optional<T> part(PartKind kind, Class<T> type) {
        return Optional.ofNullable(type.cast(parts.get(PartKey.of(kind))));
    }

    /** This job with one part put in or replaced. */
    public Job with(PartKey key, Part part) {
        Map<PartKey, Part> next = new TreeMap<>(parts);
        next.put(key, part);
        return new Job(id, number, next);
    }

    public Optional<Booking> booking() {
        return part(PartKind.BOOKING, Booking.class);
    }

    public Optional<Standing> standing() {
        return part(PartKind.STANDING, Standing.class);
    }

    public Optional<Nameplate> nameplate() {
        return part(PartKind.NAMEPLATE, Nameplate.class);
    }

    public Optional<Inspection> inspection() {
        return part(PartKind.INSPECTION, Inspection.class);
    }

    public Optional<RectifierSet> rectifier() {
        return part(PartKind.RECTIFIER, RectifierSet.class);
    }

    public Optional<ProcessTests> inProcess() {
        return part(PartKind.IN_PROCESS, ProcessTests.class);
    }

    public Optional<RunUp> runUp() {
        return part(PartKind.RUN_UP, RunUp.class);
    }

    public Optional<SignOffs> signOffs() {
        return part(PartKind.SIGN_OFFS, SignOffs.class);
    }

    public Optional<WindingData> windingAsFound(WindingRole role) {
        return part(PartKey.windingAsFound(role)).map(WindingData.class::cast);
    }

    public Optional<WindingData> windingAsWound(WindingRole role) {
        return part(PartKey.windingAsWound(role)).map(WindingData.class::cast);
    }

    /** Keys of the quotes by their numbers: the tenth comes after the ninth. */
    public List<PartKey> quoteKeys() {
        return keys(PartKind.QUOTE).stream().sorted(Comparator.comparing(PartKey::name,
                Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))).toList();
    }

    /** The quotes by their numbers. */
    public List<Quote> quotes() {
        return quoteKeys().stream().map(key -> (Quote) parts.get(key)).toList();
    }

    /** Keys of all parts of a kind, in order. */
    public List<PartKey> keys(PartKind kind) {
        List<PartKey> found = new ArrayList<>();
        for (PartKey k : parts.keySet()) {
            if (k.kind() == kind) {
                found.add(k);
            }
        }
        return found;
    }
}

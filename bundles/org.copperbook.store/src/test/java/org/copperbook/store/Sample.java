package org.copperbook.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;

/** Invented records for tests. */
public final class Sample {

    public static final PartKey BOOKING = PartKey.parse("booking");
    public static final PartKey NAMEPLATE = PartKey.parse("nameplate");
    public static final PartKey STANDING = PartKey.parse("standing");

    private static final PartJson JSON = new PartJson();

    private Sample() {
    }

    public static Booking booking(String customer, String machine) {
        return new Booking(Booking.SCHEMA, Instant.parse("2026-03-02T08:15:00Z"), "foreman", null, machine, customer,
                null, null, LocalDate.of(2026, 3, 20), null, null, null, List.of(), null, "no output", List.of(), null,
                null, null, List.of(), null, Map.of());
    }

    public static Nameplate nameplate(String serial) {
        return part("nameplate", "{\"schema\":1,\"serial\":\"" + serial + "\"}", Nameplate.class);
    }

    public static Standing cancelled(String reason) {
        return part("standing", "{\"schema\":1,\"closure\":{\"how\":\"CANCELLED\",\"reason\":\"" + reason + "\"}}",
                Standing.class);
    }

    public static <T extends Part> T part(String key, String json, Class<T> type) {
        try {
            return type.cast(JSON.read(PartKey.parse(key), json));
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }
}

package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Staff;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;
import org.copperbook.store.StoreText;

/**
 * Puts changes of people, roles and secrets into the chain, with who made them. Names and secrets are kept elsewhere; the
 * chain has keys and roles only.
 */
final class StaffRecord {

    /** Who is named when nobody has a secret yet and nobody said who it is. */
    static final String NOT_SIGNED_IN = "not-signed-in";

    private static final String PART = PartKey.of(PartKind.STAFF).toString();

    private final Tables tables;
    private final Reading reading;
    private final PartJson json;

    StaffRecord(Tables tables, Reading reading, PartJson json) {
        this.tables = tables;
        this.reading = reading;
        this.json = json;
    }

    /** Notes how things stand after a change, and why; to be called in the transaction that makes the change. */
    void note(Connection c, String who, String why, Instant now) throws SQLException {
        Part staff = now(c);
        int latest = tables.revisions().latest(c, JobStore.SHOP, PART).map(Revision::revision).orElse(0);
        tables.revisions().append(c, JobStore.SHOP, "", PART, latest + 1, now, who, why, json.write(staff));
    }

    /**
     * What people have now that the chain does not say, for an audit: somebody changed roles with other means or with an
     * older version. Nothing in stores that have no such record yet.
     */
    Optional<String> oddity(Connection c) throws SQLException {
        Staff noted = reading.current(c, JobStore.SHOP, PartKey.of(PartKind.STAFF)).map(s -> (Staff) s.part())
                .orElse(null);
        if (noted == null) {
            return Optional.empty();
        }
        Staff found = now(c);
        TreeSet<String> keys = new TreeSet<>(noted.members().keySet());
        keys.addAll(found.members().keySet());
        keys.removeIf(k -> Objects.equals(noted.members().get(k), found.members().get(k)));
        return keys.isEmpty() ? Optional.empty()
                : Optional.of(StoreText.of("audit.staff", String.join(", ", keys)));
    }

    private Staff now(Connection c) throws SQLException {
        return Staff.of(tables.people().all(c).values());
    }
}

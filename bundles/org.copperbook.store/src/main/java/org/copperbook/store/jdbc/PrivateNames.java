package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.Erased;
import org.copperbook.store.PrivateName;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** Who can be erased, and what an erasure reaches. */
final class PrivateNames {

    private final Tables tables;

    PrivateNames(Tables tables) {
        this.tables = tables;
    }

    /** The jobs that mention somebody. */
    private record Use(List<String> numbers, Instant last) {
    }

    List<PrivateName> all(Connection c) throws SQLException {
        Map<String, Use> uses = uses(c);
        List<PrivateName> found = new ArrayList<>();
        for (Person p : tables.people().all(c).values()) {
            found.add(name(p.key(), p.name() == null ? "" : p.name(), !p.roles().isEmpty(), uses));
        }
        tables.personal().names(c).forEach((key, name) -> found.add(name(key, name, false, uses)));
        return found;
    }

    /** What erasing a key will do. */
    Erased before(Connection c, String key) throws SQLException {
        Person person = tables.people().all(c).get(key);
        Optional<String> name = person == null ? tables.personal().name(c, key) : Optional.ofNullable(person.name());
        if (person == null && name.isEmpty() && tables.photos().get(c, key).isEmpty()) {
            throw new StoreException(StoreException.Kind.NOT_FOUND, StoreText.of("eraseNone", key));
        }
        Use use = uses(c).getOrDefault(key, new Use(List.of(), null));
        return new Erased(key, use.numbers(), name.filter(n -> !n.isBlank()).isPresent()
                ? tables.revisions().saying(c, name.get()) : 0);
    }

    private static PrivateName name(String key, String name, boolean staff, Map<String, Use> uses) {
        Use use = uses.getOrDefault(key, new Use(List.of(), null));
        return new PrivateName(key, name, staff, use.numbers(), use.last());
    }

    private static Map<String, Use> uses(Connection c) throws SQLException {
        Map<String, Use> found = new HashMap<>();
        try (PreparedStatement q = c.prepareStatement("SELECT u.key, r.number, r.changed_at FROM person_use u"
                + " JOIN register r ON r.job_id = u.job_id ORDER BY u.key, r.number_key"); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                Use use = found.getOrDefault(r.getString(1), new Use(new ArrayList<>(), Instant.EPOCH));
                use.numbers().add(r.getString(2));
                Instant at = Kept.time(r.getString(3));
                found.put(r.getString(1), new Use(use.numbers(), at.isAfter(use.last()) ? at : use.last()));
            }
        }
        return found;
    }
}

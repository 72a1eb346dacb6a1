package org.copperbook.store.jdbc;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** People and contacts, outside the chain, each under a key of its own. */
final class PersonTable {

    private final PartJson json;
    private final SettingTable settings;
    private final PersonalTable personal;

    PersonTable(PartJson json, SettingTable settings, PersonalTable personal) {
        this.json = json;
        this.settings = settings;
        this.personal = personal;
    }

    void put(Connection c, Person person) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO person (key, json) VALUES (?, ?)"
                + " ON CONFLICT (key) DO UPDATE SET json = excluded.json")) {
            in.setString(1, person.key());
            in.setString(2, personal.close(c, person.key(), text(person)));
            in.executeUpdate();
        }
        changed(c);
    }

    /** Counts a change, so that other programs notice. */
    void changed(Connection c) throws SQLException {
        settings.put(c, SettingTable.PEOPLE_CHANGES, Long.toString(changes(c) + 1));
    }

    /** How often people were changed. */
    long changes(Connection c) throws SQLException {
        return settings.number(c, SettingTable.PEOPLE_CHANGES);
    }

    Map<String, Person> all(Connection c) throws SQLException {
        Map<String, Person> found = new LinkedHashMap<>();
        try (PreparedStatement q = c.prepareStatement("SELECT key, json FROM person ORDER BY key");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.put(r.getString(1), person(r.getString(1), personal.open(c, r.getString(1), r.getString(2))));
            }
        }
        return found;
    }

    private String text(Person person) {
        try {
            return json.mapper().writeValueAsString(person);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the person " + person.key() + " could not be written as JSON", e);
        }
    }

    private Person person(String key, String text) {
        try {
            return json.mapper().readValue(text, Person.class);
        } catch (JsonProcessingException e) {
            throw new StoreException(StoreException.Kind.UNREADABLE_RECORD,
                    StoreText.of("unreadablePerson", key, e.getOriginalMessage()), e);
        }
    }
}

package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** Counters and marks of the store itself. */
final class SettingTable {

    static final String PEOPLE_CHANGES = "people-changes";
    /** In a copy of another store: how often people there had been changed when they were copied, and one more. */
    static final String COPIED_PEOPLE = "copied-people";
    static final String PERSONAL_EDITION = "personal-edition";
    static final String PAST_WINDINGS_EDITION = "past-windings-edition";
    static final String STOCK_EDITION = "stock-edition";
    static final String REGISTER_EDITION = "register-edition";

    void put(Connection c, String name, String value) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO setting (name, value) VALUES (?, ?)"
                + " ON CONFLICT (name) DO UPDATE SET value = excluded.value")) {
            in.setString(1, name);
            in.setString(2, value);
            in.executeUpdate();
        }
    }

    /** The whole number under a name, 0 when there is none. */
    long number(Connection c, String name) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT value FROM setting WHERE name = ?")) {
            q.setString(1, name);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Long.parseLong(r.getString(1)) : 0;
            }
        }
    }
}

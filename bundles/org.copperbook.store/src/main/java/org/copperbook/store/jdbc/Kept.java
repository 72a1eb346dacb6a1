package org.copperbook.store.jdbc;

import java.sql.SQLDataException;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.Function;

/** Reads what stands in a column as text. A damaged file can hold anything, and then the database is what is wrong. */
final class Kept {

    /** SQLSTATE "data corrupted" of PostgreSQL. */
    private static final String DAMAGED = "XX001";

    private Kept() {
    }

    /** A time, ISO 8601. */
    static Instant time(String text) throws SQLException {
        return as(text, Instant::parse, "a time");
    }

    /** A day, ISO 8601. */
    static LocalDate day(String text) throws SQLException {
        return as(text, LocalDate::parse, "a day");
    }

    /**
     * A value of some words.
     *
     * @param reader throws an exception of its own for a text that is none
     */
    static <T> T word(String text, Function<String, T> reader) throws SQLException {
        return as(text, reader, "another word");
    }

    private static <T> T as(String text, Function<String, T> reader, String expected) throws SQLException {
        try {
            return reader.apply(text);
        } catch (RuntimeException e) {
            throw new SQLDataException("\"" + text + "\" stands where " + expected + " should be", DAMAGED, e);
        }
    }
}

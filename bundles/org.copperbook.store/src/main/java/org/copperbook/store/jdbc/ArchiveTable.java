package org.copperbook.store.jdbc;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/**
 * A table as it goes into an archive: a text file with one JSON object a line. Values are carried over as they stand in
 * the file, so that the text that was hashed comes back character by character.
 *
 * @param file    name of the file in the archive
 * @param table   table it holds
 * @param columns columns, under whose names the values stand
 * @param since   edition of the format from which on archives have it
 * @param where   which rows, as a condition with its leading word, and their order
 */
record ArchiveTable(String file, String table, List<Column> columns, int since, String where) {

    /** A column, whether it holds whole numbers, and whether its text is under the key that stands in the first. */
    record Column(String name, boolean whole, boolean closed) {
    }

    private static final int LONGEST_LINE = 16 << 20;
    /** SQLite's code of a broken constraint in the low byte, and the class that the SQL standard gives it. */
    private static final int PRIMARY = 0xff;
    private static final int CONSTRAINT = 19;
    private static final String CONSTRAINT_STATE = "23";

    static final List<ArchiveTable> ALL = List.of(
            new ArchiveTable("jobs.jsonl", "job", columns("id", "number", "created_at"), 1,
                    "WHERE number IS NOT NULL ORDER BY id"),
            new ArchiveTable("revisions.jsonl", "revision", columns("#sequence", "job_id", "part", "#revision",
                    "saved_at", "who", "why", "json", "previous_hash", "hash"), 1, "ORDER BY sequence"),
            new ArchiveTable("people.jsonl", "person", columns("key", "*json"), 1, "ORDER BY key"),
            new ArchiveTable("number-series.jsonl", "number_series", columns("pattern", "#year", "#last"), 1,
                    "ORDER BY pattern, year"),
            new ArchiveTable("private-names.jsonl", "private_name", columns("key", "*text"), 2, "ORDER BY key"),
            new ArchiveTable("erased.jsonl", "erased", columns("key", "erased_at"), 2, "ORDER BY key"));

    private static List<Column> columns(String... names) {
        return List.of(names).stream().map(n -> new Column(n.replaceAll("[#*]", ""), n.startsWith("#"), n.startsWith("*"))).toList();
    }

    /** Writes every row; returns how many. */
    long write(Connection c, PersonalTable personal, ObjectMapper mapper, OutputStream out) throws SQLException, IOException {
        long rows = 0;
        try (PreparedStatement q = c.prepareStatement(
                "SELECT " + names() + " FROM " + table + " " + where); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                ObjectNode row = mapper.createObjectNode();
                for (int i = 0; i < columns.size(); i++) {
                    if (columns.get(i).whole()) {
                        row.put(columns.get(i).name(), r.getLong(i + 1));
                    } else {
                        String text = r.getString(i + 1);
                        row.put(columns.get(i).name(),
                                columns.get(i).closed() ? personal.open(c, r.getString(1), text) : text);
                    }
                }
                out.write(mapper.writeValueAsBytes(row));
                out.write('\n');
                rows++;
            }
        }
        return rows;
    }

    /** Puts every line in as a row. */
    void read(Connection c, ObjectMapper mapper, BufferedReader in) throws SQLException, IOException {
        long line = 0;
        try (PreparedStatement put = c.prepareStatement("INSERT INTO " + table + " (" + names() + ") VALUES ("
                + String.join(", ", Collections.nCopies(columns.size(), "?")) + ")")) {
            for (String text = line(in); text != null; text = line(in)) {
                line++;
                JsonNode row = row(mapper, text, line);
                for (int i = 0; i < columns.size(); i++) {
                    JsonNode value = row.path(columns.get(i).name());
                    if (columns.get(i).whole() ? !value.canConvertToLong() || !value.isIntegralNumber()
                            : !value.isTextual()) {
                        throw bad(line, columns.get(i).name());
                    }
                    if (columns.get(i).whole()) {
                        put.setLong(i + 1, value.longValue());
                    } else {
                        put.setString(i + 1, value.textValue());
                    }
                }
                put(put, line);
            }
        }
    }

    /** A line of at most {@value #LONGEST_LINE} characters; nothing at the end. */
    private static String line(BufferedReader in) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int c = in.read(); c >= 0; c = in.read()) {
            if (c == '\n') {
                return text.toString();
            }
            if (text.length() == LONGEST_LINE) {
                throw new IOException(StoreText.of("archive.longLine"));
            }
            text.append((char) c);
        }
        return text.isEmpty() ? null : text.toString();
    }

    /** A row that contradicts another is the archive's fault, not the disk's. */
    private void put(PreparedStatement put, long line) throws SQLException {
        try {
            put.executeUpdate();
        } catch (SQLException e) {
            boolean contradicts = (e.getErrorCode() & PRIMARY) == CONSTRAINT
                    || e.getSQLState() != null && e.getSQLState().startsWith(CONSTRAINT_STATE);
            if (contradicts) {
                throw bad(line, e.getMessage());
            }
            throw e;
        }
    }

    private JsonNode row(ObjectMapper mapper, String text, long line) {
        try {
            return mapper.readTree(text.getBytes(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw bad(line, e.getOriginalMessage());
        } catch (IOException e) {
            throw bad(line, e.getMessage());
        }
    }

    private StoreException bad(long line, String what) {
        return new StoreException(StoreException.Kind.CORRUPT, StoreText.of("archive.line", file, line, what));
    }

    private String names() {
        return String.join(", ", columns.stream().map(Column::name).toList());
    }
}

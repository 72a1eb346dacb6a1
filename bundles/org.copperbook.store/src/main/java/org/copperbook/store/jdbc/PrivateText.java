package org.copperbook.store.jdbc;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.json.PersonalFields;
import org.copperbook.store.StoreText;

/**
 * A part's text as it is chained: with keys where names of people were typed, so that a name can be erased and the
 * chain still holds. A name that was erased is read as a remark that says so, and saved again it stays what it was.
 */
final class PrivateText {

    /** First characters of the key of a typed name. */
    static final String NAME_MARK = "n-";

    private static final String PLACE = "private:";
    private static final Pattern KEY = Pattern.compile(NAME_MARK + "[0-9a-f]{16}");

    private final PersonalTable table;
    /** Numbers stay character by character what they were. */
    private final ObjectReader trees;

    PrivateText(PersonalTable table, PartJson json) {
        this.table = table;
        trees = json.mapper().reader().without(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES);
    }

    /** The text to chain for a part's own text; notes who is mentioned. */
    String chained(Connection c, String jobId, PartKey key, String text) throws SQLException {
        if (!PersonalFields.in(key.kind())) {
            return text;
        }
        JsonNode tree = tree(text);
        try {
            PersonalFields.replace(key.kind(), tree, name -> PLACE + keyOf(c, name));
        } catch (Failed e) {
            throw e.cause;
        }
        for (String mentioned : mentioned(tree, key.kind())) {
            table.use(c, mentioned, jobId);
        }
        return tree.toString();
    }

    /** A part's own text for the chained one. What is no JSON comes back as it is, for its reader to say so. */
    String plain(Connection c, PartKey key, String chained) throws SQLException {
        if (!PersonalFields.in(key.kind()) || !chained.contains('"' + PLACE)) {
            return chained;
        }
        try {
            JsonNode tree = trees.readTree(chained);
            PersonalFields.replace(key.kind(), tree, text -> name(c, text));
            return tree.toString();
        } catch (JsonProcessingException | NumberFormatException e) {
            return chained;
        } catch (Failed e) {
            throw e.cause;
        }
    }

    /** Keys of the typed names and of the contact that a chained text mentions; none when it cannot be read. */
    Set<String> mentioned(String part, String chained) {
        try {
            PartKind kind = PartKey.parse(part).kind();
            return PersonalFields.in(kind) ? mentioned(trees.readTree(chained), kind) : Set.of();
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return Set.of();
        }
    }

    private static Set<String> mentioned(JsonNode tree, PartKind kind) {
        Set<String> found = new TreeSet<>();
        PersonalFields.replace(kind, tree, text -> {
            if (text.startsWith(PLACE)) {
                found.add(text.substring(PLACE.length()));
            }
            return text;
        });
        String contact = tree.path("contactKey").asText("");
        if (kind == PartKind.BOOKING && !contact.isBlank()) {
            found.add(contact);
        }
        return found;
    }

    private String keyOf(Connection c, String name) {
        Matcher m = KEY.matcher(name);
        try {
            if (m.find() && name.equals(erased(m.group()))) {
                return m.group();
            }
            return table.keyOf(c, name);
        } catch (SQLException e) {
            throw new Failed(e);
        }
    }

    private String name(Connection c, String text) {
        String key = text.startsWith(PLACE) ? text.substring(PLACE.length()) : "";
        if (!KEY.matcher(key).matches()) {
            return text;
        }
        try {
            return table.name(c, key).orElseGet(() -> erased(key));
        } catch (SQLException e) {
            throw new Failed(e);
        }
    }

    private static String erased(String key) {
        return StoreText.of("erasedName", key);
    }

    private JsonNode tree(String text) {
        try {
            return trees.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a part was not written as JSON", e);
        }
    }

    /** Carries an error of the database out of an operator. */
    private static final class Failed extends RuntimeException {

        private static final long serialVersionUID = 1L;
        private final SQLException cause;

        Failed(SQLException cause) {
            super(cause);
            this.cause = cause;
        }
    }
}

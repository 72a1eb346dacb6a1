package org.copperbook.sheets.cards;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Which column of a table is which field of a winding card.
 *
 * @param cardMapping layout version, 1
 * @param role        which winding the cards are of
 * @param decimal     decimal mark of numbers written as text; null to detect it
 * @param columns     the columns in the order of the table
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record CardMapping(int cardMapping, WindingRole role, DecimalMark decimal, List<Column> columns) {

    public static final int VERSION = 1;

    public CardMapping {
        columns = columns == null ? List.of() : List.copyOf(columns);
        role = role == null ? WindingRole.MAIN_STATOR : role;
    }

    /**
     * One column.
     *
     * @param header its title in the table
     * @param field  what it holds; null to leave it out
     * @param unit   unit of its bare numbers; null when the field has none
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Column(String header, CardField field, String unit) {

        public Column {
            header = header == null ? "" : header;
        }
    }

    /** This mapping with one column meant otherwise. */
    public CardMapping with(int column, CardField field, String unit) {
        List<Column> next = new ArrayList<>(columns);
        next.set(column, new Column(columns.get(column).header(), field, unit));
        return new CardMapping(cardMapping, role, decimal, next);
    }

    public CardMapping withRole(WindingRole next) {
        return new CardMapping(cardMapping, next, decimal, columns);
    }

    public CardMapping withDecimal(DecimalMark next) {
        return new CardMapping(cardMapping, role, next, columns);
    }

    /** What keeps the mapping from being used, in words; empty when nothing does. */
    @JsonIgnore
    public List<String> problems() {
        List<String> problems = new ArrayList<>();
        Set<CardField> seen = EnumSet.noneOf(CardField.class);
        for (Column c : columns) {
            if (c.field() != null && !seen.add(c.field())) {
                problems.add(CardWords.say("mapping.twice", c.field().inWords()));
            }
        }
        if (!seen.contains(CardField.TURNS)) {
            problems.add(CardWords.say("mapping.no-turns", CardField.TURNS.inWords()));
        }
        return problems;
    }

    /** What tells tables of one layout from others: a digest of their titles. */
    public static String signature(List<String> headers) {
        String joined = String.join("\u0001", headers.stream().map(HeaderGuess::folded).toList());
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(joined.getBytes(StandardCharsets.UTF_8))).substring(0, 32);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The titles of the columns. */
    @JsonIgnore
    public List<String> headers() {
        return columns.stream().map(Column::header).toList();
    }
}

package org.copperbook.sheets.cards;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.UnitTable;
import org.copperbook.jobs.winding.WindingRole;

/** Guesses what the columns of a table hold, by the words in their titles. */
public final class HeaderGuess {

    private static final Pattern UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]{1,8})\\s*[)\\]]");
    private static final Pattern NOT_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9][0-9., ]*");
    private static final Pattern COMMA_NUMBER = Pattern.compile("-?\\d{1,7},\\d{1,6}");
    private static final Pattern DOT_NUMBER = Pattern.compile("-?\\d{1,7}\\.\\d{1,6}");
    private static final int LOOK = 25;

    private HeaderGuess() {
    }

    /**
     * The row that holds the titles: the first of those in which most titles are understood, or the first row when it holds
     * words over figures; 0 when there is none.
     */
    public static int headerRow(List<TableRow> first) {
        int best = 0;
        int most = 1;
        for (TableRow row : first.subList(0, Math.min(LOOK, first.size()))) {
            Set<CardField> fields = EnumSet.noneOf(CardField.class);
            for (TableCell cell : row.cells()) {
                if (!NUMBER.matcher(cell.text()).matches()) {
                    field(cell.text()).ifPresent(fields::add);
                }
            }
            if (fields.size() > most) {
                most = fields.size();
                best = row.number();
            }
        }
        return best > 0 || first.size() < 2 || !titles(first.get(0), first.get(1)) ? best : first.get(0).number();
    }

    /** Words over figures: titles that nobody has heard of are titles all the same. */
    private static boolean titles(TableRow row, TableRow below) {
        return row.cells().stream().noneMatch(c -> NUMBER.matcher(c.text()).matches())
                && row.cells().stream().filter(c -> !c.text().isBlank()).count() > 1
                && below.cells().stream().anyMatch(c -> NUMBER.matcher(c.text()).matches());
    }

    /** The decimal mark in which numbers are written as text; a dot when there are none. */
    public static DecimalMark decimal(List<TableRow> first) {
        int commas = 0;
        int dots = 0;
        for (TableRow row : first) {
            for (TableCell cell : row.cells()) {
                if (cell.kind() == TableCell.Kind.TEXT) {
                    commas += COMMA_NUMBER.matcher(cell.text()).matches() ? 1 : 0;
                    dots += DOT_NUMBER.matcher(cell.text()).matches() ? 1 : 0;
                }
            }
        }
        return commas > dots ? DecimalMark.COMMA : DecimalMark.DOT;
    }

    /** A mapping guessed from titles; a field is given to the first column that asks for it. */
    public static CardMapping mapping(List<String> headers, WindingRole role, DecimalMark decimal) {
        Set<CardField> given = EnumSet.noneOf(CardField.class);
        List<CardMapping.Column> columns = new ArrayList<>();
        for (String header : headers) {
            CardField field = field(header).filter(given::add).orElse(null);
            columns.add(new CardMapping.Column(header, field, field == null ? null : unit(header, field)));
        }
        return new CardMapping(CardMapping.VERSION, role, decimal, columns);
    }

    /** The field whose word is the title, or whose longest word the title contains. */
    static Optional<CardField> field(String header) {
        String folded = " " + folded(UNIT.matcher(header).replaceAll(" ")) + " ";
        CardField best = null;
        int longest = 0;
        for (CardField field : CardField.values()) {
            for (String word : CardWords.text("header." + field.word()).split("\\|")) {
                String w = " " + folded(word) + " ";
                if (w.length() > longest && folded.contains(w)) {
                    best = field;
                    longest = w.length();
                }
            }
        }
        // "power (kVA)" is an apparent power whatever the word says
        boolean apparent = best == CardField.POWER && named(header, CardField.APPARENT_POWER).isPresent();
        return Optional.ofNullable(apparent ? CardField.APPARENT_POWER : best);
    }

    /** The unit a title names, else the usual one of the field. */
    static String unit(String header, CardField field) {
        return field.units().isEmpty() ? null : named(header, field).orElse(field.units().get(0));
    }

    private static Optional<String> named(String header, CardField field) {
        Matcher m = UNIT.matcher(header);
        List<String> named = new ArrayList<>();
        if (m.find()) {
            named.add(m.group(1).strip());
        }
        named.addAll(List.of(header.strip().split("[\\s,/]+")));
        for (String name : named) {
            for (String unit : field.units()) {
                boolean same = unit.equalsIgnoreCase(name) || unit.equals("r/min") && name.equalsIgnoreCase("rpm");
                boolean known = field.dimension() != null && UnitTable.find(field.dimension(), name)
                        .filter(u -> u.equals(UnitTable.unit(field.dimension(), unit))).isPresent();
                if (same || known) {
                    return Optional.of(unit);
                }
            }
        }
        return Optional.empty();
    }

    /** Lower case without accents and signs: "Slot-depth [mm]" and "slot depth mm" are the same. */
    public static String folded(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
        return NOT_WORD.matcher(apart.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }
}

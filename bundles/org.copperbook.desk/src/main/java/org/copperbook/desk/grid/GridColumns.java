package org.copperbook.desk.grid;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.copperbook.desk.entry.ChoiceEntry;
import org.copperbook.desk.entry.DateEntry;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.IntegerEntry;
import org.copperbook.desk.entry.MomentEntry;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.entry.ObservedEntry;
import org.copperbook.desk.entry.TextEntry;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;

/** The columns of a grid, declared one after the other; pointers are relative to the row ("/observed"). */
public final class GridColumns {

    private static final int LETTER = 5;
    private static final int NARROW = 9;
    private static final int NUMBER = 13;
    private static final int MIDDLE = 18;
    private static final int WIDE = 26;

    private final Words words;
    private final PageSite site;
    private final List<GridColumn> columns = new ArrayList<>();
    private final List<String> help = new ArrayList<>();
    private int saysAt = -1;

    public GridColumns(Words words, PageSite site) {
        this.words = words;
        this.site = site;
    }

    /** Text. */
    public GridColumns text(String pointer, String key) {
        return entry(pointer, key, new TextEntry(), WIDE);
    }

    /** Short text: a mark, a size. */
    public GridColumns mark(String pointer, String key) {
        return entry(pointer, key, new TextEntry(), NUMBER);
    }

    /** A number with a unit. */
    public GridColumns number(String pointer, String key, FieldUnit unit) {
        return entry(pointer, key, new NumberEntry(unit), NUMBER);
    }

    /** What an instrument showed; what is judged in the row stands right behind the first of these. */
    public GridColumns observed(String pointer, String key, FieldUnit unit) {
        entry(pointer, key, new ObservedEntry(unit), NUMBER);
        return saysAt < 0 ? says() : this;
    }

    /** Puts the column that says what is judged in the row here; else it stands last. */
    public GridColumns says() {
        saysAt = columns.size();
        return this;
    }

    /** A whole number in a range. */
    public GridColumns integer(String pointer, String key, int least, int greatest) {
        return entry(pointer, key, new IntegerEntry(least, greatest), NARROW);
    }

    /** An exact decimal number. */
    public GridColumns decimal(String pointer, String key) {
        return entry(pointer, key, new DecimalEntry(), NUMBER);
    }

    /** A price: money that is never below zero. */
    public GridColumns price(String pointer, String key) {
        return entry(pointer, key, DecimalEntry.price(), NUMBER);
    }

    /** One of the constants of an enum, under the texts "TypeName.CONSTANT". */
    public <E extends Enum<E>> GridColumns choice(String pointer, String key, Class<E> type) {
        return entry(pointer, key, ChoiceEntry.of(type, words,
                e -> site.json().mapper().convertValue(e, String.class)), MIDDLE);
    }

    /** Yes, no, or not stated. */
    public GridColumns flag(String pointer, String key) {
        return entry(pointer, key, ChoiceEntry.yesNo(), NARROW);
    }

    /** Two words for true and false. */
    public GridColumns either(String pointer, String key, String trueKey, String falseKey) {
        return entry(pointer, key, ChoiceEntry.either(words.text(trueKey), words.text(falseKey)), NUMBER);
    }

    /** Two words for true and false under a heading that asks, so that yes and no are understood too. */
    public GridColumns answer(String pointer, String key, String trueKey, String falseKey) {
        return entry(pointer, key, ChoiceEntry.answer(words.text(trueKey), words.text(falseKey)), NUMBER);
    }

    /** A date. */
    public GridColumns date(String pointer, String key) {
        return entry(pointer, key, new DateEntry(), NUMBER);
    }

    /** A moment. */
    public GridColumns moment(String pointer, String key) {
        return entry(pointer, key, new MomentEntry(), MIDDLE);
    }

    /** An instrument of the shop. */
    public GridColumns instrument(String pointer, String key) {
        return entry(pointer, key, ChoiceEntry.proposals(site::instruments), MIDDLE);
    }

    /** A person of the shop. */
    public GridColumns person(String pointer, String key) {
        return entry(pointer, key, ChoiceEntry.keys(site::people), MIDDLE);
    }

    /** Text with proposals. */
    public GridColumns proposals(String pointer, String key, Supplier<Map<String, String>> labelByValue) {
        return entry(pointer, key, ChoiceEntry.proposals(labelByValue), MIDDLE);
    }

    /** An entry of the page's own. */
    public GridColumns entry(String pointer, String key, Entry entry, int chars) {
        add(key, new GridColumn(pointer, words.text(key), entry, chars, null));
        return this;
    }

    /** Text that gives way: a column behind it stays in sight as far as there is room for both. */
    public GridColumns textBefore(String keeps, String pointer, String key) {
        add(key, new GridColumn(pointer, words.text(key), new TextEntry(), WIDE, keeps, null));
        return this;
    }

    /** A number with a unit under a heading that is data, not a text of the plug-in; it may have line breaks. */
    public GridColumns titledNumber(String pointer, String title, FieldUnit unit) {
        GridColumn column = new GridColumn(pointer, title, new NumberEntry(unit), NARROW, null);
        columns.add(column);
        help.add(column.oneLine());
        return this;
    }

    /** A text computed from the row. */
    public GridColumns computed(String id, String key, Function<JsonNode, String> text) {
        add(key, new GridColumn(id, words.text(key), null, NUMBER, text));
        return this;
    }

    /** A short text computed from the row: a number, a mark. */
    public GridColumns computedMark(String id, String key, Function<JsonNode, String> text) {
        add(key, new GridColumn(id, words.text(key), null, NARROW, text));
        return this;
    }

    /** A longer text computed from the row. */
    public GridColumns computedText(String id, String key, Function<JsonNode, String> text) {
        columns.add(new GridColumn(id, words.text(key), null, WIDE, text));
        return this;
    }

    /** A very short text that is typed: a phase, a lead. */
    public GridColumns letter(String pointer, String key) {
        return entry(pointer, key, new TextEntry(), LETTER);
    }

    private void add(String key, GridColumn column) {
        columns.add(column);
        help.add(words.has(key + ".help") ? words.text(key + ".help") : column.oneLine());
    }

    /** What F1 says of each column: the text under the key of its heading with ".help" behind it, else the heading. */
    List<String> help() {
        return List.copyOf(help);
    }

    /** Place of the column that says what is judged in the row. */
    int saysAt() {
        return saysAt < 0 ? columns.size() : saysAt;
    }

    /** The columns declared so far. */
    public List<GridColumn> columns() {
        return List.copyOf(columns);
    }
}

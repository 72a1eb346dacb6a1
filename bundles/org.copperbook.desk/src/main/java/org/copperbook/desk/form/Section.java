package org.copperbook.desk.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
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
import org.eclipse.swt.widgets.Composite;

/**
 * A titled group of fields. Every field names the JSON pointer of its place in the part and the key of its label in the
 * plug-in's texts; the key with {@code .help} behind it, where it exists, is what F1 shows.
 */
public final class Section {

    private static final int NUMBER_CHARS = 16;
    private static final int WHOLE_CHARS = 10;
    private static final int CHOICE_CHARS = 26;
    /** Arrow and edges of a list, in characters. */
    private static final int ARROW_CHARS = 8;
    private static final int MOMENT_CHARS = 20;

    private final Form form;
    private final Composite body;
    private final PageSite site;
    private final Words words;

    Section(Form form, Composite body, PageSite site, Words words) {
        this.form = form;
        this.body = body;
        this.site = site;
        this.words = words;
    }

    /** One line of text. */
    public Section text(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINE, new TextEntry(), 0);
    }

    /**
     * One line of text for which the page offers something below.
     *
     * @param hanging JSON pointer of what was taken from the offers; typing anything else takes it out, in the same undo step
     * @param goThere puts the cursor on the offers, for the arrow downwards; false when there are none
     */
    public Section offered(String pointer, String key, String hanging, BooleanSupplier goThere) {
        form.add(typed(pointer, key, TypedField.Shape.LINE, new TextEntry(), 0).takesOff(hanging).offers(goThere));
        return this;
    }

    /** A field with a list to choose from and an entry of the page's own; what is typed takes the other field out. */
    public Section listTakingOff(String hanging, String pointer, String key, Entry entry) {
        form.add(typed(pointer, key, TypedField.Shape.LIST, entry, 0).takesOff(hanging));
        return this;
    }

    /** Several lines of text. */
    public Section longText(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINES, new TextEntry(), 0);
    }

    /** A number with a unit. */
    public Section number(String pointer, String key, FieldUnit unit) {
        return field(pointer, key, TypedField.Shape.LINE, new NumberEntry(unit), NUMBER_CHARS);
    }

    /** What an instrument showed: a number with a unit, or "OL", "> 2 G", "< 0.01", "unstable", "n/p". */
    public Section observed(String pointer, String key, FieldUnit unit) {
        return field(pointer, key, TypedField.Shape.LINE, new ObservedEntry(unit), NUMBER_CHARS);
    }

    /** A whole number in a range. */
    public Section integer(String pointer, String key, int least, int greatest) {
        return field(pointer, key, TypedField.Shape.LINE, new IntegerEntry(least, greatest), WHOLE_CHARS);
    }

    /** An exact decimal number without unit (money, percent of a quote). */
    public Section decimal(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINE, new DecimalEntry(), NUMBER_CHARS);
    }

    /** A price or a limit: money that is never below zero. */
    public Section price(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINE, DecimalEntry.price(), NUMBER_CHARS);
    }

    /** A decimal number where it stands in place of another field: a value here empties the other one, in one undo step. */
    public Section decimalInPlaceOf(String other, String pointer, String key) {
        form.add(typed(pointer, key, TypedField.Shape.LINE, new DecimalEntry(), NUMBER_CHARS).inPlaceOf(other));
        return this;
    }

    /** One of the constants of an enum; labels are the texts under "TypeName.CONSTANT". */
    public <E extends Enum<E>> Section choice(String pointer, String key, Class<E> type) {
        ChoiceEntry entry = entryOf(type);
        return field(pointer, key, TypedField.Shape.LIST, entry, chars(entry.choices()));
    }

    /**
     * The same, where another field is filled in the same undo step if it is empty.
     *
     * @param fills JSON pointer of the other field
     * @param value what it is filled with
     */
    public <E extends Enum<E>> Section choiceFilling(String fills, Supplier<JsonNode> value, String pointer, String key,
            Class<E> type) {
        form.add(typed(pointer, key, TypedField.Shape.LIST, entryOf(type), CHOICE_CHARS).fills(fills, value));
        return this;
    }

    /** Yes, no, or not stated. */
    public Section flag(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LIST, ChoiceEntry.yesNo(), WHOLE_CHARS);
    }

    /** Two words for true and false, e.g. "isolated" and "in circuit", or not stated. */
    public Section either(String pointer, String key, String trueKey, String falseKey) {
        return field(pointer, key, TypedField.Shape.LIST,
                ChoiceEntry.either(words.text(trueKey), words.text(falseKey)), CHOICE_CHARS);
    }

    /** A date. */
    public Section date(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINE, new DateEntry(), MOMENT_CHARS);
    }

    /** A moment. */
    public Section moment(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LINE, new MomentEntry(), MOMENT_CHARS);
    }

    /** An instrument of the shop. */
    public Section instrument(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LIST, ChoiceEntry.proposals(site::instruments), CHOICE_CHARS);
    }

    /** A person of the shop. */
    public Section person(String pointer, String key) {
        return field(pointer, key, TypedField.Shape.LIST, ChoiceEntry.keys(site::people), CHOICE_CHARS);
    }

    /** Text with proposals. */
    public Section proposals(String pointer, String key, Supplier<Map<String, String>> labelByValue) {
        return field(pointer, key, TypedField.Shape.LIST, ChoiceEntry.proposals(labelByValue), CHOICE_CHARS);
    }

    /** A list of words, each ticked or not. */
    public <E extends Enum<E>> Section checks(String pointer, String key, Class<E> type) {
        Map<JsonNode, String> options = new LinkedHashMap<>();
        for (E e : type.getEnumConstants()) {
            options.put(site.json().mapper().valueToTree(e), words.of(e));
        }
        form.add(new ChecksField(row(key), site.document(), site.key(), pointer, options));
        return this;
    }

    /**
     * One of a list of values under a question that is data, not a text of the plug-in; values by their labels.
     *
     * @param mind what to mind before the question is tried, shown below it; empty for nothing
     */
    public Section asked(String pointer, String question, Map<String, String> labelByValue, String mind) {
        FieldRow row = new FieldRow(body, question, form.labelWidth(), form::relayout);
        form.add(new TypedField(row, TypedField.Shape.LIST, site.document(), site.key(), pointer,
                ChoiceEntry.keys(() -> labelByValue), chars(labelByValue.values()), () -> null));
        if (!mind.isEmpty()) {
            row.minds(mind, pointer + "/cautions");
        }
        return this;
    }

    /** A list of values that are data, each ticked or not; values by their labels. */
    public Section ticked(String pointer, String question, Map<String, String> labelByValue) {
        Map<JsonNode, String> options = new LinkedHashMap<>();
        labelByValue.forEach((value, label) -> options.put(TextNode.valueOf(value), label));
        form.add(new ChecksField(new FieldRow(body, question, form.labelWidth(), form::relayout), site.document(),
                site.key(), pointer, options));
        return this;
    }

    /** A field with an entry of the page's own. */
    public Section entry(String pointer, String key, Entry entry) {
        boolean list = !entry.choices().isEmpty();
        return field(pointer, key, list ? TypedField.Shape.LIST : TypedField.Shape.LINE, entry,
                entry.isNumeric() ? NUMBER_CHARS : 0);
    }

    /** Several lines with an entry of the page's own. */
    public Section lines(String pointer, String key, Entry entry) {
        return field(pointer, key, TypedField.Shape.LINES, entry, 0);
    }

    /** A figure computed from the draft, written anew after every change. The id serves to find it and its verdicts. */
    public Section computed(String id, String key, Supplier<String> value) {
        form.add(new ComputedField(row(key), id, value));
        return this;
    }

    /** The entry for an enum under this plug-in's words; grids use the same. */
    public <E extends Enum<E>> ChoiceEntry entryOf(Class<E> type) {
        return form.choice(type);
    }

    private Section field(String pointer, String key, TypedField.Shape shape, Entry entry, int chars) {
        form.add(typed(pointer, key, shape, entry, chars));
        return this;
    }

    private TypedField typed(String pointer, String key, TypedField.Shape shape, Entry entry, int chars) {
        String help = key + ".help";
        return new TypedField(row(key), shape, site.document(), site.key(), pointer, entry, chars,
                () -> words.has(help) ? words.text(help) : null);
    }

    /** As many characters as the longest choice and the arrow of its list take. */
    private static int chars(Collection<String> choices) {
        return Math.max(CHOICE_CHARS, ARROW_CHARS + choices.stream().mapToInt(String::length).max().orElse(0));
    }

    private FieldRow row(String key) {
        return new FieldRow(body, words.text(key), form.labelWidth(), form::relayout);
    }
}

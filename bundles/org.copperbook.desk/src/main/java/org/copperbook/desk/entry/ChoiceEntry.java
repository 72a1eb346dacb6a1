package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.Words;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

/**
 * One of a list of values, each with a label. Typing accepts the label, its beginning when that is unambiguous, or the
 * value itself.
 */
public final class ChoiceEntry implements Entry {

    private final Supplier<Map<JsonNode, String>> options;
    private final boolean open;
    private final Map<String, JsonNode> otherWords;

    private ChoiceEntry(Supplier<Map<JsonNode, String>> options, boolean open) {
        this(options, open, Map.of());
    }

    private ChoiceEntry(Supplier<Map<JsonNode, String>> options, boolean open, Map<String, JsonNode> otherWords) {
        this.options = options;
        this.open = open;
        this.otherWords = otherWords;
    }

    /**
     * The constants of an enum under the words of a plug-in: "TypeName.CONSTANT" is the label, and what stands under
     * "TypeName.CONSTANT.also", separated by commas, is understood as well.
     */
    public static <E extends Enum<E>> ChoiceEntry of(Class<E> type, Words words, Function<? super E, String> value) {
        Map<JsonNode, String> labels = new LinkedHashMap<>();
        Map<String, JsonNode> others = new LinkedHashMap<>();
        for (E e : type.getEnumConstants()) {
            JsonNode node = TextNode.valueOf(value.apply(e));
            labels.put(node, words.of(e));
            String also = Words.key(e) + ".also";
            if (words.has(also)) {
                for (String word : words.text(also).split(" *, *")) {
                    others.put(word.toLowerCase(Locale.ROOT), node);
                }
            }
        }
        return new ChoiceEntry(() -> labels, false, Map.copyOf(others));
    }

    /** The constants of an enum, under the words given, written the way the record writes them (name or JSON value). */
    public static <E extends Enum<E>> ChoiceEntry of(Class<E> type, Function<? super E, String> label,
            Function<? super E, String> value) {
        Map<JsonNode, String> m = new LinkedHashMap<>();
        for (E e : type.getEnumConstants()) {
            m.put(TextNode.valueOf(value.apply(e)), label.apply(e));
        }
        return new ChoiceEntry(() -> m, false);
    }

    /** Keys with labels that may change while the field is open (instruments, people). */
    public static ChoiceEntry keys(Supplier<Map<String, String>> labelByKey) {
        return new ChoiceEntry(() -> nodes(labelByKey.get()), false);
    }

    /** Like {@link #keys} but any other text may be typed as well. */
    public static ChoiceEntry proposals(Supplier<Map<String, String>> labelByKey) {
        return new ChoiceEntry(() -> nodes(labelByKey.get()), true);
    }

    /** Yes or no; blank means not stated. */
    public static ChoiceEntry yesNo() {
        Map<JsonNode, String> m = new LinkedHashMap<>();
        m.put(BooleanNode.TRUE, DeskWords.text("entry.yes"));
        m.put(BooleanNode.FALSE, DeskWords.text("entry.no"));
        return new ChoiceEntry(() -> m, false);
    }

    /** Two words for true and false that answer a question, e.g. "received" and "missing"; yes and no are understood too. */
    public static ChoiceEntry answer(String whenTrue, String whenFalse) {
        Map<String, JsonNode> words = new LinkedHashMap<>();
        for (String yes : DeskWords.text("entry.yes.also").split(" *, *")) {
            words.put(yes, BooleanNode.TRUE);
        }
        for (String no : DeskWords.text("entry.no.also").split(" *, *")) {
            words.put(no, BooleanNode.FALSE);
        }
        return new ChoiceEntry(either(whenTrue, whenFalse).options, false, Map.copyOf(words));
    }

    /** Two words for true and false, e.g. "isolated" and "in circuit"; blank means not stated. */
    public static ChoiceEntry either(String whenTrue, String whenFalse) {
        Map<JsonNode, String> m = new LinkedHashMap<>();
        m.put(BooleanNode.TRUE, whenTrue);
        m.put(BooleanNode.FALSE, whenFalse);
        return new ChoiceEntry(() -> m, false);
    }

    @Override
    public String show(JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return "";
        }
        String label = options.get().get(value);
        return label != null ? label : value.asText();
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        Map<JsonNode, String> now = options.get();
        List<Typed.Understood> begins = new ArrayList<>();
        for (Map.Entry<JsonNode, String> e : now.entrySet()) {
            if (e.getValue().equalsIgnoreCase(t) || e.getKey().asText().equalsIgnoreCase(t)) {
                return new Typed.Understood(e.getKey(), e.getValue());
            }
            if (e.getValue().toLowerCase(Locale.getDefault()).startsWith(t.toLowerCase(Locale.getDefault()))) {
                begins.add(new Typed.Understood(e.getKey(), e.getValue()));
            }
        }
        JsonNode other = otherWords.get(t.toLowerCase(Locale.ROOT));
        if (other != null) {
            return new Typed.Understood(other, now.get(other));
        }
        if (open) {
            return new Typed.Understood(TextNode.valueOf(t), t);
        }
        if (begins.size() == 1) {
            return begins.get(0);
        }
        if (begins.size() > 1) {
            return new Typed.Ambiguous(DeskWords.text("entry.whichOne", t), begins);
        }
        return new Typed.Wrong(DeskWords.text("entry.notInList", t, String.join(", ", choices())));
    }

    @Override
    public List<String> choices() {
        return List.copyOf(options.get().values());
    }

    /** Whether texts outside the list may be typed. */
    public boolean isOpen() {
        return open;
    }

    private static Map<JsonNode, String> nodes(Map<String, String> labels) {
        Map<JsonNode, String> m = new LinkedHashMap<>();
        labels.forEach((k, v) -> m.put(JsonNodeFactory.instance.textNode(k), v));
        return m;
    }
}

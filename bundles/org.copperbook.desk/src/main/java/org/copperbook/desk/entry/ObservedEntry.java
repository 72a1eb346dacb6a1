package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.reading.Observed.Kind;

/**
 * What an instrument showed: a number with a unit, or one of the answers that are findings themselves. "OL" and
 * "> 2 G" are above range, "< 0.01" is below resolution, "unstable" and "n/p" (not possible) are words.
 */
public final class ObservedEntry implements Entry {

    private final NumberEntry number;

    public ObservedEntry(FieldUnit unit) {
        this.number = new NumberEntry(unit);
    }

    ObservedEntry(NumberEntry number) {
        this.number = number;
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isObject()) {
            return "";
        }
        String shown = number.show(value.path("value"));
        return switch (Kind.valueOf(value.path("kind").asText("VALUE"))) {
            case VALUE -> shown;
            case ABOVE_RANGE -> shown.isEmpty() ? DeskWords.text("observed.aboveRange") : "> " + shown;
            case BELOW_RESOLUTION -> shown.isEmpty() ? DeskWords.text("observed.belowResolution") : "< " + shown;
            case UNSTABLE -> DeskWords.text("observed.unstable");
            case NOT_POSSIBLE -> DeskWords.text("observed.notPossible");
        };
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        Kind word = word(t.toLowerCase(Locale.ROOT));
        if (word != null) {
            return understood(word, MissingNode.getInstance());
        }
        return switch (t.charAt(0)) {
            case '>', '\u2265' -> of(Kind.ABOVE_RANGE, t.substring(1));
            case '<', '\u2264' -> of(Kind.BELOW_RESOLUTION, t.substring(1));
            default -> of(Kind.VALUE, t);
        };
    }

    @Override
    public boolean isNumeric() {
        return true;
    }

    private Typed of(Kind kind, String text) {
        Typed read = number.read(text);
        if (read instanceof Typed.Understood u) {
            return understood(kind, u.node());
        }
        if (read instanceof Typed.Ambiguous a) {
            List<Typed.Understood> answers = a.answers().stream().map(u -> understood(kind, u.node())).toList();
            return new Typed.Ambiguous(a.question(), answers);
        }
        if (read instanceof Typed.Blank) {
            return understood(kind, MissingNode.getInstance());
        }
        return read;
    }

    private Typed.Understood understood(Kind kind, JsonNode value) {
        ObjectNode o = JsonNodeFactory.instance.objectNode().put("kind", kind.name());
        if (value.isNumber()) {
            o.set("value", value);
        }
        return new Typed.Understood(o, show(o));
    }

    /** The words as they are typed at a bench, beside those of the locale. */
    private static Kind word(String t) {
        return switch (t) {
            case "ol", "o.l", "o.l.", "0l", "over", "open", "inf", "\u221e", ">" -> Kind.ABOVE_RANGE;
            case "below", "<" -> Kind.BELOW_RESOLUTION;
            case "unstable", "drifts", "~" -> Kind.UNSTABLE;
            case "n/p", "np", "not possible" -> Kind.NOT_POSSIBLE;
            default -> localWord(t);
        };
    }

    private static Kind localWord(String t) {
        if (t.equalsIgnoreCase(DeskWords.text("observed.aboveRange"))) {
            return Kind.ABOVE_RANGE;
        }
        if (t.equalsIgnoreCase(DeskWords.text("observed.belowResolution"))) {
            return Kind.BELOW_RESOLUTION;
        }
        if (t.equalsIgnoreCase(DeskWords.text("observed.unstable"))) {
            return Kind.UNSTABLE;
        }
        return t.equalsIgnoreCase(DeskWords.text("observed.notPossible")) ? Kind.NOT_POSSIBLE : null;
    }
}

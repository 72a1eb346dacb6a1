package org.copperbook.desk.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.function.Supplier;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.jobs.PartKey;

/**
 * Ties one field of a page to one place of a record. While somebody types, every text that is understood goes into the
 * draft at once, so that verdicts and the crash journal follow; a text that is not understood is kept as typed. Leaving
 * the field writes the value back normalised, or says beside the field what is wrong.
 */
public final class FieldBinding {

    /** The field as the binding sees it. */
    public interface View {

        /** The text in the field. */
        String text();

        /** Writes a text into the field without being told about it as typing. */
        void show(String text);

        /** Says something beside the field. */
        void say(Note note);

        /** Takes what was said away while somebody types, without moving what stands below. */
        default void quiet() {
            say(new Note.None());
        }
    }

    private final JobDocument document;
    private final PartKey key;
    private final String pointer;
    private final Entry entry;
    private final View view;
    private boolean typing;
    private JsonNode valueOnEntry;
    private String typedOnEntry;
    private String other;
    private JsonNode otherOnEntry;
    private String hanging;
    private Supplier<JsonNode> fill;
    private JsonNode hangingOnEntry;

    public FieldBinding(JobDocument document, PartKey key, String pointer, Entry entry, View view) {
        this.document = document;
        this.key = key;
        this.pointer = pointer;
        this.entry = entry;
        this.view = view;
    }

    /** Names a field that is emptied when a value is put here. */
    FieldBinding inPlaceOf(String pointerOfOther) {
        other = pointerOfOther;
        return this;
    }

    /** Names a field that holds only as long as nothing else is typed here: another text, or none, takes it out. */
    FieldBinding takesOff(String pointerOfHanging) {
        hanging = pointerOfHanging;
        return this;
    }

    /** Names a field that is filled with a value where it is empty when something is put here. */
    FieldBinding fills(String pointerOfHanging, Supplier<JsonNode> value) {
        hanging = pointerOfHanging;
        fill = value;
        return this;
    }

    /** JSON pointer of the field. */
    public String pointer() {
        return pointer;
    }

    /** The field is entered: what Esc goes back to. */
    public void enter() {
        valueOnEntry = document.value(key, pointer);
        typedOnEntry = document.typed(key, pointer).orElse(null);
        otherOnEntry = other == null ? null : document.value(key, other);
        hangingOnEntry = hanging == null ? null : document.value(key, hanging);
    }

    /** The text changed under somebody's hands. Half-typed is not wrong yet: nothing is said before the field is left. */
    public void typed() {
        typing = true;
        try {
            take(view.text());
            view.quiet();
        } finally {
            typing = false;
        }
    }

    /**
     * The field is left or Enter was pressed: writes back what was understood.
     *
     * @return whether the text was understood
     */
    public boolean commit() {
        String text = view.text();
        if (text.equals(shown()) && document.typed(key, pointer).isEmpty()) {
            document.closeStep(key);
            view.say(new Note.None());
            return true;
        }
        typing = true;
        Note note;
        try {
            note = take(text);
        } finally {
            typing = false;
        }
        document.closeStep(key);
        boolean good = note instanceof Note.None;
        if (good) {
            view.show(shown());
        }
        view.say(note);
        return good;
    }

    /** Puts one of the answers to a question. */
    public void answer(Typed.Understood chosen) {
        view.show(chosen.echo());
        typing = true;
        Note note;
        try {
            note = put(chosen, chosen.echo());
        } finally {
            typing = false;
        }
        document.closeStep(key);
        view.say(note);
    }

    /** Esc: back to what stood here when the field was entered. */
    public void restore() {
        typing = true;
        try {
            if (typedOnEntry != null) {
                document.keepTyped(key, pointer, typedOnEntry);
            } else if (hanging != null) {
                document.setWith(key, pointer, valueOnEntry, hanging, hangingOnEntry);
            } else {
                document.set(key, pointer, valueOnEntry);
            }
            if (otherOnEntry != null && !otherOnEntry.isMissingNode()) {
                document.setInPlaceOf(key, other, otherOnEntry, pointer);
            }
        } finally {
            typing = false;
        }
        document.closeStep(key);
        refresh();
    }

    /** The draft changed: shows what it holds now, unless the change came out of this very field. */
    public void refresh() {
        if (typing) {
            return;
        }
        Optional<String> open = document.typed(key, pointer);
        String now = open.orElseGet(this::shown);
        if (!now.equals(view.text())) {
            view.show(now);
        }
        view.say(open.map(this::judge).orElseGet(Note.None::new));
    }

    private String shown() {
        return entry.show(document.value(key, pointer));
    }

    private Note judge(String text) {
        Typed read = entry.read(text);
        if (read instanceof Typed.Wrong w) {
            return new Note.Problem(w.why());
        }
        if (read instanceof Typed.Ambiguous a) {
            return new Note.Question(a.question(), a.answers());
        }
        return new Note.None();
    }

    private Note take(String text) {
        Typed read = entry.read(text);
        if (read instanceof Typed.Blank) {
            Optional<String> problem = hanging == null ? document.set(key, pointer, null)
                    : document.setWith(key, pointer, null, hanging, fill == null ? null : document.value(key, hanging));
            if (problem.isPresent()) {
                document.keepTyped(key, pointer, text);
                return new Note.Problem(problem.get());
            }
            return new Note.None();
        }
        if (read instanceof Typed.Understood u) {
            return put(u, text);
        }
        document.keepTyped(key, pointer, text);
        return judge(text);
    }

    /** What stands in the field that hangs on this one once something is put here. */
    private JsonNode hangingWith() {
        if (fill == null) {
            return null;
        }
        JsonNode now = document.value(key, hanging);
        return now.isMissingNode() || now.isNull() ? fill.get() : now;
    }

    private Note put(Typed.Understood u, String text) {
        JsonNode value = entry.over(document.value(key, pointer), u.node());
        Optional<String> problem = hanging != null ? document.setWith(key, pointer, value, hanging, hangingWith())
                : other == null ? document.set(key, pointer, value) : document.setInPlaceOf(key, pointer, value, other);
        if (problem.isPresent()) {
            document.keepTyped(key, pointer, text);
            return new Note.Problem(problem.get());
        }
        return new Note.None();
    }
}

package org.copperbook.desk.document;

import java.util.Map;
import java.util.TreeMap;
import java.util.Collections;
import org.copperbook.jobs.Part;

/**
 * A part as it stands on the screen: the record, and beside it every text that was typed and could not be understood
 * yet. Drafts are immutable, so undo is a stack of them and the crash journal is the newest one.
 *
 * @param part    the record; null while the part has not been begun
 * @param asTyped text as typed by JSON pointer of its field, for fields whose text does not fit
 */
public record Draft(Part part, Map<String, String> asTyped) {

    /** A part not begun. */
    public static final Draft EMPTY = new Draft(null, Map.of());

    public Draft {
        asTyped = Collections.unmodifiableMap(new TreeMap<>(asTyped));
    }

    /** A draft of a record without open texts. */
    public static Draft of(Part part) {
        return new Draft(part, Map.of());
    }

    /** This draft with the text of one field kept as typed; a null text drops it. */
    public Draft withTyped(String pointer, String text) {
        Map<String, String> next = new TreeMap<>(asTyped);
        if (text == null) {
            next.remove(pointer);
        } else {
            next.put(pointer, text);
        }
        return new Draft(part, next);
    }
}

package org.copperbook.desk.editor;

import com.fasterxml.jackson.databind.JsonNode;
import org.copperbook.desk.document.FieldDifference;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.history.FieldChange;

/** How two copies of a part are told to people, field by field. */
@FunctionalInterface
public interface DifferenceWords {

    /** What people call the place in which the copies differ. */
    String place(PartKey part, FieldDifference difference);

    /** What stands there in one of the copies. */
    default String value(PartKey part, FieldDifference difference, JsonNode side) {
        return plain(FieldChange.text(side));
    }

    /** A text as it is shown; one that says nothing is said to be empty. */
    static String plain(String text) {
        return text.isEmpty() ? DeskWords.text("conflict.nothing") : text;
    }
}

package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One field in which two copies of a record differ.
 *
 * @param pointer the field (JSON pointer)
 * @param base    value both started from; missing when there was none
 * @param mine    value here
 * @param theirs  value in the store
 */
public record FieldDifference(String pointer, JsonNode base, JsonNode mine, JsonNode theirs) {

    /** Whether only the other side changed the field, so that taking theirs loses nothing typed here. */
    public boolean onlyTheirs() {
        return mine.equals(base);
    }

    /** Whether only this side changed it. */
    public boolean onlyMine() {
        return theirs.equals(base);
    }

    /** Whether both are about one field or row, which may have moved in its list meanwhile. */
    boolean sameAs(FieldDifference other) {
        return pointer.equals(other.pointer) || base.equals(other.base) && theirs.equals(other.theirs)
                && pointer.matches("/[^/]+/\\d+") && other.pointer.startsWith(pointer.substring(0, pointer.lastIndexOf('/') + 1));
    }

    /** The fields in which two records differ; lists of equal length row by row, others as a whole. */
    public static List<FieldDifference> between(ObjectNode base, ObjectNode mine, ObjectNode theirs) {
        List<FieldDifference> found = new ArrayList<>();
        compare("", base, mine, theirs, found);
        return List.copyOf(found);
    }

    private static void compare(String at, JsonNode base, JsonNode mine, JsonNode theirs,
            List<FieldDifference> found) {
        if (mine.equals(theirs)) {
            return;
        }
        if (mine.isObject() && theirs.isObject()) {
            Set<String> names = new TreeSet<>();
            mine.fieldNames().forEachRemaining(names::add);
            theirs.fieldNames().forEachRemaining(names::add);
            for (String n : names) {
                compare(at + "/" + n.replace("~", "~0").replace("/", "~1"), base.path(n), mine.path(n),
                        theirs.path(n), found);
            }
        } else if (mine.isArray() && theirs.isArray() && mine.size() == theirs.size()) {
            for (int i = 0; i < mine.size(); i++) {
                compare(at + "/" + i, base.isArray() ? base.path(i) : MissingNode.getInstance(), mine.path(i),
                        theirs.path(i), found);
            }
        } else {
            found.add(new FieldDifference(at, base, mine, theirs));
        }
    }
}

package org.copperbook.desk.document;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Changes in the tree of a record by JSON pointer (RFC 6901). The tree given is never changed; a changed copy comes
 * back.
 */
public final class PartTree {

    private PartTree() {
    }

    /** The value at a pointer; a missing node when there is none. */
    public static JsonNode at(ObjectNode tree, String pointer) {
        return tree == null ? MissingNode.getInstance() : tree.at(pointer);
    }

    /**
     * The tree with a value put at a pointer. Objects and rows on the way are made where they are missing. Null takes
     * the field out, and with it objects left empty on the way; rows of lists always stay.
     *
     * @throws IllegalArgumentException when the pointer leads through a value that is neither object nor list
     */
    public static ObjectNode with(ObjectNode tree, String pointer, JsonNode value) {
        ObjectNode copy = tree.deepCopy();
        putInto(copy, pointer, value);
        return copy;
    }

    /** The same in the tree given, for many values put into one copy. */
    static void putInto(ObjectNode copy, String pointer, JsonNode value) {
        JsonPointer p = JsonPointer.compile(pointer);
        if (p.matches()) {
            throw new IllegalArgumentException("the whole record cannot be put at a pointer");
        }
        put(copy, p, value == null || value.isNull() || value.isMissingNode() ? null : value, pointer);
    }

    /** The tree with a row put into a list before an index (the list's length puts it last). */
    public static ObjectNode withRow(ObjectNode tree, String list, int index, JsonNode row) {
        ObjectNode copy = tree.deepCopy();
        ArrayNode rows = rows(copy, list);
        rows.insert(Math.min(index, rows.size()), row);
        return copy;
    }

    /** The tree with a row taken out of a list. */
    public static ObjectNode withoutRow(ObjectNode tree, String list, int index) {
        ObjectNode copy = tree.deepCopy();
        rows(copy, list).remove(index);
        return copy;
    }

    /** Number of rows of a list; none when it is missing. */
    public static int size(ObjectNode tree, String list) {
        return at(tree, list).size();
    }

    private static ArrayNode rows(ObjectNode copy, String list) {
        JsonNode n = copy.at(list);
        if (n instanceof ArrayNode a) {
            return a;
        }
        ArrayNode made = JsonNodeFactory.instance.arrayNode();
        put(copy, JsonPointer.compile(list), made, list);
        return made;
    }

    private static void put(JsonNode at, JsonPointer p, JsonNode value, String whole) {
        JsonPointer rest = p.tail();
        boolean last = rest.matches();
        if (at instanceof ObjectNode o) {
            String field = p.getMatchingProperty();
            if (last) {
                if (value == null) {
                    o.remove(field);
                } else {
                    o.set(field, value);
                }
                return;
            }
            JsonNode child = o.get(field);
            if (child == null || child.isNull()) {
                if (value == null) {
                    return;
                }
                child = container(rest);
                o.set(field, child);
            }
            put(child, rest, value, whole);
            if (value == null && child.isObject() && child.isEmpty()) {
                o.remove(field);
            }
        } else if (at instanceof ArrayNode a) {
            int index = p.getMatchingIndex();
            if (index < 0) {
                throw new IllegalArgumentException(whole + " names a field where the record has a list");
            }
            while (a.size() <= index) {
                a.addObject();
            }
            if (last) {
                if (value == null) {
                    a.remove(index);
                } else {
                    a.set(index, value);
                }
                return;
            }
            put(a.get(index), rest, value, whole);
        } else {
            throw new IllegalArgumentException(whole + " leads through a plain value");
        }
    }

    private static JsonNode container(JsonPointer rest) {
        return rest.getMatchingIndex() >= 0 ? JsonNodeFactory.instance.arrayNode()
                : JsonNodeFactory.instance.objectNode();
    }
}

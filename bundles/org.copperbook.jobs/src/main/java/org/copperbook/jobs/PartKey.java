package org.copperbook.jobs;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;
import java.util.Objects;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Names one part inside a job: its kind and, where a job can have several, a name.
 *
 * @param kind the kind of part
 * @param name empty, or a lower-case name such as "main-stator", "main-stator.as-wound" or "2"
 */
public record PartKey(PartKind kind, String name) implements Comparable<PartKey> {

    /** Suffix of the record of the new winding, which stands beside the winding as found and never over it. */
    public static final String AS_WOUND = ".as-wound";

    public PartKey {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        if (kind.many() == name.isEmpty()) {
            throw new IllegalArgumentException(
                    kind.many() ? "a " + kind.word() + " part needs a name, like " + kind.word() + "/1"
                            : "a " + kind.word() + " part has no name, but got \"" + name + "\"");
        }
        if (!name.matches("[a-z0-9.-]*")) {
            throw new IllegalArgumentException("part name \"" + name + "\" may hold only a-z, 0-9, dot and hyphen");
        }
    }

    public static PartKey of(PartKind kind) {
        return new PartKey(kind, "");
    }

    public static PartKey quote(int number) {
        return new PartKey(PartKind.QUOTE, Integer.toString(number));
    }

    public static PartKey windingAsFound(WindingRole role) {
        return new PartKey(PartKind.WINDING, role.word());
    }

    public static PartKey windingAsWound(WindingRole role) {
        return new PartKey(PartKind.WINDING, role.word() + AS_WOUND);
    }

    /**
     * Reads the text form, e.g. "booking" or "winding/main-stator".
     *
     * @throws IllegalArgumentException when the text names no part
     */
    @JsonCreator
    public static PartKey parse(String text) {
        int slash = text.indexOf('/');
        String kind = slash < 0 ? text : text.substring(0, slash);
        return new PartKey(PartKind.of(kind.toLowerCase(Locale.ROOT)), slash < 0 ? "" : text.substring(slash + 1));
    }

    @JsonValue
    @Override
    public String toString() {
        return name.isEmpty() ? kind.word() : kind.word() + "/" + name;
    }

    @Override
    public int compareTo(PartKey other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : name.compareTo(other.name);
    }
}

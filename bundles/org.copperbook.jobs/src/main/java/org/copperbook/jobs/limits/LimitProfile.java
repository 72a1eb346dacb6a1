package org.copperbook.jobs.limits;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.Part;

/**
 * Every limit the checks use, each with its source. The shipped profile is the default; a workshop or a customer may
 * override an entry, and the original stays beside it.
 *
 * @param schema layout version
 * @param name   name of the profile
 * @param limits the entries
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record LimitProfile(int schema, String name, List<Limit> limits, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public LimitProfile {
        limits = limits == null ? List.of() : List.copyOf(limits);
        more = more == null ? Map.of() : more;
    }

    /** The entry with an id, as overridden where it is. */
    public Optional<Limit> find(String id) {
        return limits.stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /**
     * This profile with one entry overridden. The entry it replaces stays beside it as its original; an override of an
     * override keeps the first original, because that is what the workshop departs from.
     *
     * @throws IllegalArgumentException when the new entry does not say why
     */
    public LimitProfile override(Limit by) {
        if (by.why() == null || by.why().isBlank()) {
            throw new IllegalArgumentException("an override of the limit \"" + by.id() + "\" needs its reason");
        }
        List<Limit> next = new ArrayList<>();
        boolean found = false;
        for (Limit l : limits) {
            if (l.id().equals(by.id())) {
                next.add(by.inPlaceOf(l.original() == null ? l : l.original()));
                found = true;
            } else {
                next.add(l);
            }
        }
        if (!found) {
            next.add(by);
        }
        return new LimitProfile(schema, name, next, more);
    }

    /**
     * This profile on top of another one: its entries win and keep the other's as originals where they differ and name
     * none; entries that only the other one has come with it. A shop's own profile is laid on the shipped one in this
     * way, so that a limit that a later version ships is not missing.
     */
    public LimitProfile laidOn(LimitProfile base) {
        List<Limit> next = new ArrayList<>();
        Set<String> mine = new HashSet<>();
        for (Limit l : limits) {
            mine.add(l.id());
            Limit below = base.find(l.id()).orElse(null);
            next.add(l.original() == null && below != null && !below.equals(l) ? l.inPlaceOf(below) : l);
        }
        for (Limit l : base.limits()) {
            if (!mine.contains(l.id())) {
                next.add(l);
            }
        }
        return new LimitProfile(schema, name, next, more);
    }
}

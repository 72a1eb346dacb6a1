package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.signoff.Role;

/**
 * Who could do what at a time: the roles of the people of the shop by key, without names, so that it can stand in the
 * record for good. Only the store writes it, whenever a person, a role or a secret changes.
 *
 * @param schema  layout version
 * @param members everybody who has or had a role here, by key
 * @param more    fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Staff(int schema, Map<String, Member> members, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Staff {
        members = members == null ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(members));
        more = more == null ? Map.of() : more;
    }

    /** The people of the shop among all people; contacts have no role and are left out. */
    public static Staff of(Iterable<Person> people) {
        Map<String, Member> members = new TreeMap<>();
        for (Person p : people) {
            if (!p.roles().isEmpty()) {
                members.put(p.key(), new Member(p.roles(), p.active()));
            }
        }
        return new Staff(SCHEMA, members, Map.of());
    }

    /** What somebody is here: roles, and whether the person still works here. */
    public record Member(Set<Role> roles, boolean active) {

        public Member {
            roles = roles == null || roles.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(roles));
        }
    }
}

package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.signoff.Role;

/**
 * A person of the shop or a customer's contact. Kept outside the parts, which only name the key, so that a lawful
 * erasure leaves the record intact.
 *
 * @param key    key used in parts
 * @param name   name shown
 * @param roles  roles in the shop; empty for a contact
 * @param phone  telephone, or null
 * @param mail   electronic mail, or null
 * @param active false for somebody who has left
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Person(String key, String name, Set<Role> roles, String phone, String mail, boolean active,
        @KeepUnknown Map<String, JsonNode> more) {

    public Person {
        if (key == null || key.isBlank()) {
            throw new IllegalArgumentException("a person needs a key");
        }
        roles = roles == null ? Set.of() : Set.copyOf(roles);
        more = more == null ? Map.of() : more;
    }

    /** A person with what this version knows. */
    public Person(String key, String name, Set<Role> roles, String phone, String mail, boolean active) {
        this(key, name, roles, phone, mail, active, Map.of());
    }

    /** A key that says nothing of the name, since it becomes part of the record for good. */
    public static String newKey() {
        return "p-" + UUID.randomUUID().toString().substring(0, 13);
    }
}

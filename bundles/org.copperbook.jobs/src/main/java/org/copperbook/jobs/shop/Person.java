package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Set;
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
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Person(String key, String name, Set<Role> roles, String phone, String mail, boolean active) {

    public Person {
        if (key == null || key.isBlank()) {
            throw new IllegalArgumentException("a person needs a key");
        }
        roles = roles == null ? Set.of() : Set.copyOf(roles);
    }
}

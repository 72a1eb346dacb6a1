package org.copperbook.store;

import java.time.Instant;
import java.util.List;

/**
 * A person, or a name typed into a part, that can be erased.
 *
 * @param key     key to erase by
 * @param name    name as it is shown
 * @param staff   true for somebody with a role in the shop
 * @param jobs    numbers of the jobs that mention it (of a person: as contact), smallest first
 * @param lastUse when one of these jobs was last changed; null when there are none
 */
public record PrivateName(String key, String name, boolean staff, List<String> jobs, Instant lastUse) {

    public PrivateName {
        jobs = List.copyOf(jobs);
    }
}

package org.copperbook.store;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Person;

/**
 * What is taken in at once: all of it or nothing.
 *
 * @param shopParts parts of the shop (settings, instruments, stock, limits); each becomes the current revision
 * @param people    people; one already known under the key is replaced
 * @param jobs      whole jobs; one without a number gets the next free one
 */
public record Intake(Map<PartKey, Part> shopParts, List<Person> people, List<Job> jobs) {

    public Intake {
        shopParts = Map.copyOf(shopParts);
        people = List.copyOf(people);
        jobs = List.copyOf(jobs);
    }

    /** Jobs only. */
    public static Intake of(Job... jobs) {
        return new Intake(Map.of(), List.of(), List.of(jobs));
    }
}

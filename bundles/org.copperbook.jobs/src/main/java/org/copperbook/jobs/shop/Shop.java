package org.copperbook.jobs.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.limits.LimitProfile;

/**
 * What the checks and workbooks need to know of the shop beside a job.
 *
 * @param workshop    settings
 * @param instruments instruments with their accuracy
 * @param stock       wire on the shelf
 * @param limits      the limit profile in force
 * @param people      people by the key that parts name; a key without an entry has been erased or never was
 */
public record Shop(Workshop workshop, Instruments instruments, WireStock stock, LimitProfile limits,
        Map<String, Person> people) {

    public Shop {
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(instruments, "instruments");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(limits, "limits");
        people = Collections.unmodifiableMap(new LinkedHashMap<>(people));
    }

    /** The person behind a key, if known. */
    public Optional<Person> person(String key) {
        return Optional.ofNullable(key).map(people::get);
    }

    /** The name to show for a key: the person's name, or the key itself when nobody is known under it. */
    public String nameOf(String key) {
        return person(key).map(Person::name).orElse(key == null ? "" : key);
    }
}

package org.copperbook.jobs.customer;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which bookings are one customer's. A booking tied to a customer of the register belongs to that one, whatever name it bears.
 * Older ones, and those tied to nobody who is here, belong by their name alone, letter case aside; of a name that several
 * customers bear nobody can tell whose they are.
 */
public final class BookedFor {

    /** How sure it is that a booking is the customer's. */
    public enum Claim { TIED, BY_NAME, BY_SHARED_NAME, NONE }

    private final Set<String> known;
    private final Set<String> family;
    private final Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    private final Set<String> others = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);

    /**
     * Prepares the names.
     *
     * @param customers customers of the shop, by key
     * @param key       whose bookings are asked for; with all who were merged
     * @param earlier   names that these had before
     */
    public BookedFor(Map<String, Customer> customers, String key, Collection<String> earlier) {
        known = Set.copyOf(customers.keySet());
        Merging merging = new Merging(customers);
        family = merging.family(key);
        merging.names(key).forEach(n -> put(n, names));
        earlier.forEach(n -> put(n, names));
        customers.forEach((k, c) -> {
            if (!family.contains(k)) {
                put(c.name(), others);
            }
        });
    }

    private static void put(String name, Set<String> in) {
        if (name != null && !name.isBlank()) {
            in.add(name.strip());
        }
    }

    /** All names under which bookings of the customer may stand. */
    public Set<String> names() {
        return Set.copyOf(names);
    }

    /**
     * Whether a booking is the customer's.
     *
     * @param customerKey key that the booking has, or null
     * @param name        name that the booking bears, or null
     */
    public Claim claim(String customerKey, String name) {
        if (customerKey != null && known.contains(customerKey)) {
            return family.contains(customerKey) ? Claim.TIED : Claim.NONE;
        }
        String plain = name == null ? "" : name.strip();
        return !names.contains(plain) ? Claim.NONE : others.contains(plain) ? Claim.BY_SHARED_NAME : Claim.BY_NAME;
    }
}

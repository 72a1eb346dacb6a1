package org.copperbook.jobs.customer;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who of the customers turned out to be who. One stays; the other points to it and keeps all it had, so that taking the
 * pointer away again undoes the merging.
 *
 * @param customers customers by key
 */
public record Merging(Map<String, Customer> customers) {

    public Merging {
        customers = Map.copyOf(customers);
    }

    /** The customer behind a key in the end: the one that it was merged into, and that one in turn. */
    public String stays(String key) {
        Set<String> way = new HashSet<>();
        String at = key;
        while (way.add(at) && customers.containsKey(at) && customers.get(at).mergedInto() != null) {
            at = customers.get(at).mergedInto();
        }
        return at;
    }

    /** All keys under which one customer is known, the given one among them. */
    public Set<String> family(String key) {
        String head = stays(key);
        Set<String> family = new TreeSet<>();
        customers.keySet().stream().filter(k -> stays(k).equals(head)).forEach(family::add);
        family.add(key);
        return family;
    }

    /** All names under which one customer is known. */
    public Set<String> names(String key) {
        Set<String> names = new LinkedHashSet<>();
        for (String k : family(key)) {
            if (customers.containsKey(k) && customers.get(k).name() != null) {
                names.add(customers.get(k).name());
            }
        }
        return names;
    }

    /**
     * The one that goes, pointing to the one that stays in the end.
     *
     * @return nothing when they are one already, so that no pointer ever leads back to where it began
     */
    public Optional<Customer> merge(String goes, String stays) {
        String head = stays(stays);
        return !customers.containsKey(goes) || !customers.containsKey(head) || stays(goes).equals(head)
                || customers.get(goes).mergedInto() != null ? Optional.empty() : Optional.of(customers.get(goes).into(head));
    }
}

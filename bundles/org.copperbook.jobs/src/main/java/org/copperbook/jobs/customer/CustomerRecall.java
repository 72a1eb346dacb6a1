package org.copperbook.jobs.customer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Finds customers by the first letters of their name, of a name they had before they were merged, or by their key. Names
 * are prepared once, so that asking at every key costs little.
 */
public final class CustomerRecall {

    /** Nothing is offered for fewer characters: nearly every customer would do. */
    public static final int LEAST_CHARS = 2;

    private static final int BY_KEY = 3;

    private final Map<String, Customer> customers;
    private final Merging merging;
    private final List<Known> known = new ArrayList<>();

    /** A name or key under which somebody is known. */
    private record Known(String key, String text, CustomerName name) {
    }

    /**
     * Somebody who may be meant.
     *
     * @param key      key of the customer, of the one that stays where some were merged
     * @param customer the customer
     * @param by       the other name or the key that was found; empty where the customer's own name was
     */
    public record Found(String key, Customer customer, String by) {
    }

    /** Prepares the customers of a shop, by key. */
    public CustomerRecall(Map<String, Customer> customers) {
        this.customers = Map.copyOf(customers);
        merging = new Merging(customers);
        new TreeMap<>(customers).forEach((key, c) -> {
            String stays = merging.stays(key);
            Customer head = customers.get(stays);
            if (head != null && head.offered() && head.name() != null && !head.name().isBlank()) {
                if (c.name() != null) {
                    known.add(new Known(stays, c.name(), CustomerName.of(c.name())));
                }
                known.add(new Known(stays, key, null));
            }
        });
    }

    /** The customer behind a key in the end, if the shop has it. */
    public Optional<Found> behind(String key) {
        String stays = key == null ? "" : merging.stays(key);
        return Optional.ofNullable(customers.get(stays)).map(c -> new Found(stays, c, ""));
    }

    /** Whether somebody who is offered has this very name, letter case, accents and legal form apart. */
    public boolean has(String name) {
        String wanted = CustomerName.of(name).run();
        return !wanted.isEmpty() && known.stream().anyMatch(k -> k.name() != null && k.name().run().equals(wanted));
    }

    /** Who may be meant by a text, those whose name begins with it first; nobody for a text that is too short. */
    public List<Found> find(String typed) {
        String text = typed.strip();
        if (text.length() < LEAST_CHARS) {
            return List.of();
        }
        CustomerName wanted = CustomerName.of(text);
        Map<String, Integer> rank = new HashMap<>();
        Map<String, Found> found = new LinkedHashMap<>();
        for (Known k : known) {
            Customer c = customers.get(k.key());
            boolean own = k.text().equals(c.name());
            OptionalInt how = k.name() == null ? byKey(text, k.text()) : byName(wanted, k.name());
            how.ifPresent(h -> {
                // A name before they were merged counts after the customer's own.
                int place = 2 * h + (own ? 0 : 1);
                if (place < rank.getOrDefault(k.key(), Integer.MAX_VALUE)) {
                    rank.put(k.key(), place);
                    found.put(k.key(), new Found(k.key(), c, own ? "" : k.text()));
                }
            });
        }
        List<Found> all = new ArrayList<>(found.values());
        all.sort(Comparator.comparing((Found f) -> rank.get(f.key()))
                .thenComparing(f -> f.customer().name(), String.CASE_INSENSITIVE_ORDER).thenComparing(Found::key));
        return all;
    }

    private static OptionalInt byKey(String text, String key) {
        return key.equalsIgnoreCase(text) ? OptionalInt.of(BY_KEY) : OptionalInt.empty();
    }

    /** 0 when the name begins so, 1 when each word typed begins a word of the name, 2 when the name has it inside. */
    private static OptionalInt byName(CustomerName wanted, CustomerName name) {
        if (wanted.words().isEmpty()) {
            return OptionalInt.empty();
        }
        if (name.run().startsWith(wanted.run())) {
            return OptionalInt.of(0);
        }
        if (wanted.words().stream().allMatch(w -> name.words().stream().anyMatch(n -> n.startsWith(w)))) {
            return OptionalInt.of(1);
        }
        return name.run().contains(wanted.run()) ? OptionalInt.of(2) : OptionalInt.empty();
    }
}

package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.Merging;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;

/**
 * The names of customers who turned out to be one, so that a job is found by any of them. Made of the customers as they
 * stand and kept in memory until one of them is saved or erased. For use by several threads.
 */
final class CustomerAliases {

    private static final Known NOTHING = new Known(-1, -1, List.of());

    private final Tables tables;
    private final Reading reading;
    private volatile Known known = NOTHING;

    /**
     * A customer with several names.
     *
     * @param names folded
     * @param keys  the same as keys of the register's column
     */
    record Family(Set<String> names, Set<String> keys) {

        boolean has(String foldedWord) {
            return names.stream().anyMatch(n -> n.contains(foldedWord));
        }
    }

    /** What was found when the chain and the people stood so. */
    private record Known(long sequence, long people, List<Family> families) {
    }

    CustomerAliases(Tables tables, Reading reading) {
        this.tables = tables;
        this.reading = reading;
    }

    /** Those customers who have more than one name. */
    List<Family> families(Connection c) throws SQLException {
        long last = tables.revisions().lastSequence(c);
        long people = tables.people().changes(c);
        Known before = known;
        if (before.people() == people && (last <= before.sequence() || before.sequence() >= 0
                && !tables.revisions().anyOfKindAfter(c, before.sequence(), JobStore.SHOP, PartKind.CUSTOMER.word()))) {
            if (last > before.sequence()) {
                known = new Known(last, people, before.families());
            }
            return before.families();
        }
        List<Family> families = read(c);
        known = new Known(last, people, families);
        return families;
    }

    private List<Family> read(Connection c) throws SQLException {
        Map<String, Customer> customers = new LinkedHashMap<>();
        for (Saved s : reading.shopParts(c, PartKind.CUSTOMER)) {
            customers.put(s.key().name(), (Customer) s.part());
        }
        Merging merging = new Merging(customers);
        Map<String, Family> byHead = new LinkedHashMap<>();
        customers.forEach((key, customer) -> {
            if (customer.name() != null && !customer.name().isBlank()) {
                Family family = byHead.computeIfAbsent(merging.stays(key),
                        k -> new Family(new LinkedHashSet<>(), new LinkedHashSet<>()));
                family.names().add(SearchText.fold(customer.name().strip()));
                family.keys().add(SearchText.key(customer.name().strip()));
            }
        });
        return new ArrayList<>(byHead.values().stream().filter(f -> f.names().size() > 1).toList());
    }
}

package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.BookedFor;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.Merging;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterColumn;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSort;

/**
 * The jobs of one customer.
 *
 * @param theirs numbers of those that are the customer's, the newest first of each name
 * @param shared numbers of those booked under a name that another customer bears too, and tied to neither
 * @param more   whether there are more than were looked at
 */
record CustomerJobs(Set<String> theirs, Set<String> shared, boolean more) {

    private static final int MOST = 500;
    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);

    /**
     * Looks for them by every name that the customer has or had, since the register shows names; whose they are the bookings
     * say. Asks the store, so not for the window's thread.
     */
    static CustomerJobs of(JobStore store, Map<String, Customer> customers, String key) {
        List<String> earlier = new ArrayList<>();
        new Merging(customers).family(key).forEach(k -> store.history(JobStore.SHOP, Customer.key(k))
                .forEach(r -> earlier.add(((Customer) r.part()).name())));
        BookedFor bookings = new BookedFor(customers, key, earlier);
        CustomerJobs found = new CustomerJobs(new LinkedHashSet<>(), new LinkedHashSet<>(), false);
        boolean more = false;
        for (String name : bookings.names()) {
            List<RegisterRow> rows = store.register(new RegisterQuery(name, 0, MOST,
                    new RegisterSort(RegisterColumn.NUMBER, false))).rows();
            more |= rows.size() == MOST;
            rows.stream().filter(r -> r.customer().equalsIgnoreCase(name)).forEach(r -> found.put(r, bookings, store));
        }
        return new CustomerJobs(found.theirs, found.shared, more);
    }

    private void put(RegisterRow row, BookedFor bookings, JobStore store) {
        Optional<Booking> booking = store.current(row.jobId(), BOOKING).map(s -> (Booking) s.part());
        switch (bookings.claim(booking.map(Booking::customerKey).orElse(null), row.customer())) {
            case TIED, BY_NAME -> theirs.add(row.number());
            case BY_SHARED_NAME -> shared.add(row.number());
            case NONE -> { }
        }
    }

    /** In words. */
    String said(Words words) {
        List<String> said = new ArrayList<>();
        if (!theirs.isEmpty() || shared.isEmpty()) {
            said.add(theirs.isEmpty() ? words.text("customers.noJobs") : String.join(", ", theirs));
        }
        if (!shared.isEmpty()) {
            said.add(words.text("customers.sharedJobs", String.join(", ", shared)));
        }
        if (more) {
            said.add(words.text("customers.moreJobs"));
        }
        return String.join(" ", said);
    }
}

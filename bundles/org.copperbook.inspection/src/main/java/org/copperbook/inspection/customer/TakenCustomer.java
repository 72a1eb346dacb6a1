package org.copperbook.inspection.customer;

import java.util.List;
import java.util.Map;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;

/** What a booking takes from a customer of the register: name, key, and a contact where none is named. One undo step each. */
final class TakenCustomer {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);

    private final JobDocument document;

    TakenCustomer(JobDocument document) {
        this.document = document;
    }

    void take(String key, Customer customer) {
        document.change(BOOKING, "/customer", now -> {
            now.put("customer", customer.name()).put("customerKey", key);
            if (!now.hasNonNull("contact") && !now.hasNonNull("contactKey") && !customer.contacts().isEmpty()) {
                now.put("contact", customer.contacts().get(0).text());
            }
            return now;
        });
    }

    /** Ties the booking as it stands to a customer who has just been put into the register. */
    void tie(String key) {
        document.change(BOOKING, "/customer", now -> now.put("customerKey", key));
    }

    /** A customer for the register of what was typed while booking in. */
    static Customer asTyped(String name, Contact contact) {
        return new Customer(Customer.SCHEMA, name, null, null, null, contact == null ? List.of() : List.of(contact), null,
                null, null, null, null, null, null, Map.of());
    }
}

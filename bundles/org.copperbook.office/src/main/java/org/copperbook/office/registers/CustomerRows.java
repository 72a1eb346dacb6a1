package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.CustomerName;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RowRefusedException;

/** Customers as rows of a table, each with the first of its contacts. */
final class CustomerRows {

    private static final List<String> COLUMNS = List.of("name", "address", "town", "phone", "mail", "contact",
            "contactPhone", "contactMail", "taxId", "language", "currency", "paymentTerms", "note");

    private final Words words;
    private final RegisterShape shape;

    CustomerRows(Words words, String title) {
        this.words = words;
        List<RegisterField> fields = new ArrayList<>();
        for (String c : COLUMNS) {
            RegisterField f = RegisterField.text(c, words.text("customers." + c), words.text("customers." + c + "Titles"));
            fields.add(c.equals("name") ? f.needed() : f);
        }
        shape = new RegisterShape(title, fields, List.of("name"));
    }

    RegisterShape shape() {
        return shape;
    }

    List<Map<String, Object>> rows(Collection<Customer> customers) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Customer c : customers) {
            Contact first = c.contacts().isEmpty() ? new Contact("", "", "") : c.contacts().get(0);
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", c.name());
            row.put("address", c.address());
            row.put("phone", c.phone());
            row.put("mail", c.mail());
            row.put("contact", said(first.name()));
            row.put("contactPhone", said(first.phone()));
            row.put("contactMail", said(first.mail()));
            row.put("taxId", c.taxId());
            row.put("language", c.language());
            row.put("currency", c.currency());
            row.put("paymentTerms", c.paymentTerms());
            row.put("note", c.note());
            rows.add(row);
        }
        return rows;
    }

    private static String said(String text) {
        return text.isEmpty() ? null : text;
    }

    /**
     * Makes customers; a row is refused whose name, case, accents and legal forms aside, a customer or a row before it has
     * already.
     */
    RegisterImport.Maker<Customer> maker(Collection<Customer> there) {
        Set<String> known = new HashSet<>();
        there.forEach(c -> known.add(CustomerName.of(c.name()).sorted()));
        Map<String, Integer> first = new HashMap<>();
        return row -> {
            String name = row.text("name").orElseThrow();
            String sorted = CustomerName.of(name).sorted();
            if (known.contains(sorted)) {
                throw new RowRefusedException("name", words.text("customers.known", name));
            }
            // The table is read anew from its top when a column is meant otherwise.
            int before = first.merge(sorted, row.number(), Math::min);
            if (before != row.number()) {
                throw new RowRefusedException("name", words.text("customers.twice", name, Integer.toString(before)));
            }
            String address = String.join("\n", Stream.of(row.text("address").orElse(""), row.text("town").orElse(""))
                    .filter(t -> !t.isBlank()).toList());
            Contact contact = new Contact(row.text("contact").orElse(""), row.text("contactPhone").orElse(""),
                    row.text("contactMail").orElse(""));
            return new Customer(Customer.SCHEMA, name, address.isEmpty() ? null : address, row.text("phone").orElse(null),
                    row.text("mail").orElse(null), List.of(contact), row.text("taxId").orElse(null),
                    row.text("language").orElse(null), row.text("currency").orElse(null),
                    row.text("paymentTerms").orElse(null), row.text("note").orElse(null), null, null, Map.of());
        };
    }
}

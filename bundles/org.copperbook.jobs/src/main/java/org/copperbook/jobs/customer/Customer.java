package org.copperbook.jobs.customer;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * A customer of the shop. Name, address, telephone, mail, tax number, note and contacts are personal and stand outside
 * the chained text.
 *
 * @param schema       layout version
 * @param name         name of the firm or the person
 * @param address      address lines
 * @param phone        telephone, or null
 * @param mail         electronic mail, or null
 * @param contacts     people to talk to
 * @param taxId        number for value added tax or the like, or null
 * @param language     language of quotes, ISO 639 ("en"), or null for the shop's
 * @param currency     currency of quotes, ISO 4217, or null for the shop's
 * @param paymentTerms terms of payment in words, or null
 * @param note         remark, or null
 * @param outOfUse     true for one that is not offered any more
 * @param mergedInto   key of the customer this one turned out to be; null for a customer of its own
 * @param more         fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Customer(int schema, String name, String address, String phone, String mail, List<Contact> contacts,
        String taxId, String language, String currency, String paymentTerms, String note, Boolean outOfUse,
        String mergedInto, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Customer {
        contacts = contacts == null ? List.of() : contacts.stream().filter(c -> !c.isBlank()).toList();
        more = more == null ? Map.of() : more;
    }

    /** A customer of whom only the name is known. */
    public static Customer named(String name) {
        return new Customer(SCHEMA, name, null, null, null, List.of(), null, null, null, null, null, null, null, Map.of());
    }

    /** A key for a new customer that says nothing of the name. */
    public static PartKey newKey() {
        return key(UUID.randomUUID().toString().substring(0, 13));
    }

    /** The key of the part that holds a customer. */
    public static PartKey key(String key) {
        return new PartKey(PartKind.CUSTOMER, key);
    }

    /** Whether a text can be the key of a customer; one typed into a job file may be anything. */
    public static boolean isKey(String text) {
        return text.matches("[a-z0-9.-]+");
    }

    /** The same customer, merged into another or, with null, on its own again. */
    public Customer into(String other) {
        return new Customer(schema, name, address, phone, mail, contacts, taxId, language, currency, paymentTerms, note,
                outOfUse, other, more);
    }

    /** The same customer, out of use. */
    public Customer retired() {
        return new Customer(schema, name, address, phone, mail, contacts, taxId, language, currency, paymentTerms, note, true,
                mergedInto, more);
    }

    /** Whether it is offered: neither out of use nor merged into another. */
    public boolean offered() {
        return mergedInto == null && !Boolean.TRUE.equals(outOfUse);
    }
}

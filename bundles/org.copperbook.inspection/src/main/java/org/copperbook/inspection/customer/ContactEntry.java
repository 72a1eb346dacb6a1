package org.copperbook.inspection.customer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.function.Supplier;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.jobs.customer.Contact;

/**
 * Whom to talk to at the customer: one of the contacts that the register has, or "name; telephone; mail" as typed. The name
 * of one in the register is enough.
 */
public final class ContactEntry implements Entry {

    private final Supplier<List<Contact>> known;
    private final Supplier<String> otherwise;

    /**
     * An entry.
     *
     * @param known     contacts of the customer
     * @param otherwise what is shown where no contact was typed
     */
    public ContactEntry(Supplier<List<Contact>> known, Supplier<String> otherwise) {
        this.known = known;
        this.otherwise = otherwise;
    }

    @Override
    public String show(JsonNode value) {
        return value.isMissingNode() || value.isNull() ? otherwise.get() : Contact.parse(value.asText()).line();
    }

    @Override
    public Typed read(String text) {
        Contact typed = Contact.ofLine(text);
        if (typed.isBlank()) {
            return new Typed.Blank();
        }
        Contact meant = known.get().stream().filter(c -> c.name().equalsIgnoreCase(text.strip())).findFirst().orElse(typed);
        return new Typed.Understood(TextNode.valueOf(meant.text()), meant.line());
    }

    @Override
    public List<String> choices() {
        return known.get().stream().map(Contact::line).toList();
    }
}

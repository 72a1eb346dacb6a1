package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.jobs.customer.Contact;

/** The people to talk to at a customer, one a line: name; telephone; mail. */
final class ContactsEntry implements Entry {

    @Override
    public String show(JsonNode value) {
        List<String> lines = new ArrayList<>();
        value.forEach(v -> lines.add(Contact.parse(v.asText()).line()));
        return String.join("\n", lines);
    }

    @Override
    public Typed read(String text) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (String line : text.split("\\R")) {
            Contact c = Contact.ofLine(line);
            if (!c.isBlank()) {
                list.add(c.text());
            }
        }
        return list.isEmpty() ? new Typed.Blank() : new Typed.Understood(list, show(list));
    }
}

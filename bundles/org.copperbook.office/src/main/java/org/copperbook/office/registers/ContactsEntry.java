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

    private static final int FIELDS = 3;

    @Override
    public String show(JsonNode value) {
        List<String> lines = new ArrayList<>();
        value.forEach(v -> lines.add(line(Contact.parse(v.asText()))));
        return String.join("\n", lines);
    }

    static String line(Contact c) {
        return (c.name() + "; " + c.phone() + "; " + c.mail()).replaceAll("(; )+$", "");
    }

    @Override
    public Typed read(String text) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (String line : text.split("\\R")) {
            String[] fields = line.split(";", FIELDS);
            Contact c = new Contact(fields[0], fields.length > 1 ? fields[1] : "", fields.length > 2 ? fields[2] : "");
            if (!c.isBlank()) {
                list.add(c.text());
            }
        }
        return list.isEmpty() ? new Typed.Blank() : new Typed.Understood(list, show(list));
    }
}

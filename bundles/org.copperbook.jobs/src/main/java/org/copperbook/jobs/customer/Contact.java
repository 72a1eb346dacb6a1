package org.copperbook.jobs.customer;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.List;

/**
 * Somebody to talk to at a customer. In files it is one text with tabs between, so that name, telephone and mail are
 * kept under one key and erased together.
 *
 * @param name  name
 * @param phone telephone, may be empty
 * @param mail  electronic mail, may be empty
 */
public record Contact(String name, String phone, String mail) {

    private static final int FIELDS = 3;

    /** Blanks at both ends and control characters go, since tabs tell the fields apart. */
    public Contact {
        name = clean(name);
        phone = clean(phone);
        mail = clean(mail);
    }

    /** Reads the one text. */
    @JsonCreator
    public static Contact parse(String text) {
        List<String> fields = new ArrayList<>(List.of(text.split("\t", FIELDS)));
        while (fields.size() < FIELDS) {
            fields.add("");
        }
        return new Contact(fields.get(0), fields.get(1), fields.get(2));
    }

    /** Reads what people write: name; telephone; mail. */
    public static Contact ofLine(String line) {
        String[] fields = line.split(";", FIELDS);
        return new Contact(fields[0], fields.length > 1 ? fields[1] : "", fields.length > 2 ? fields[2] : "");
    }

    /** As people write it: name; telephone; mail, without what is missing at the end. */
    public String line() {
        return (name + "; " + phone + "; " + mail).replaceAll("(; )+$", "");
    }

    /** The one text; fields at the end that say nothing are left out. */
    @JsonValue
    public String text() {
        return (name + "\t" + phone + "\t" + mail).stripTrailing();
    }

    /** Whether it says nothing at all. */
    public boolean isBlank() {
        return name.isEmpty() && phone.isEmpty() && mail.isEmpty();
    }

    private static String clean(String text) {
        return text == null ? "" : text.replaceAll("\\p{Cntrl}+", " ").strip();
    }
}

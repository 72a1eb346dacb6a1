package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;

/** A date: the locale's way, ISO, or a number of days from today as "+14". Kept as an ISO date. */
public final class DateEntry implements Entry {

    private final Days days;
    private final Clock clock;

    public DateEntry() {
        this(Locale.getDefault(Locale.Category.FORMAT), Clock.systemDefaultZone());
    }

    DateEntry(Locale locale, Clock clock) {
        this.days = new Days(locale);
        this.clock = clock;
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isTextual()) {
            return "";
        }
        try {
            return days.day(LocalDate.parse(value.asText()));
        } catch (DateTimeException e) {
            return value.asText();
        }
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        Optional<LocalDate> day = t.matches("[+]\\d{1,4}")
                ? Optional.of(LocalDate.now(clock).plusDays(Long.parseLong(t.substring(1)))) : days.read(t);
        return day.<Typed>map(d -> new Typed.Understood(TextNode.valueOf(d.toString()), days.day(d)))
                .orElseGet(() -> new Typed.Wrong(DeskWords.text("entry.notDate", t, days.day(LocalDate.now(clock)))));
    }
}

package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.chrono.IsoChronology;
import java.util.Locale;
import org.copperbook.desk.text.DeskWords;

/** A date: the locale's way, ISO, or a number of days from today as "+14". Kept as an ISO date. */
public final class DateEntry implements Entry {

    private final DateTimeFormatter shown;
    private final DateTimeFormatter read;
    private final Clock clock;

    public DateEntry() {
        this(Locale.getDefault(Locale.Category.FORMAT), Clock.systemDefaultZone());
    }

    DateEntry(Locale locale, Clock clock) {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(FormatStyle.SHORT, null,
                IsoChronology.INSTANCE, locale);
        String fullYear = pattern.replaceAll("y+", "yyyy");
        this.shown = DateTimeFormatter.ofPattern(fullYear, locale);
        this.read = new DateTimeFormatterBuilder().parseLenient()
                .appendPattern("[yyyy-M-d]" + "[" + fullYear.replaceAll("y+", "yyyy") + "]"
                        + "[" + pattern.replaceAll("y+", "yy") + "]").toFormatter(locale);
        this.clock = clock;
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isTextual()) {
            return "";
        }
        try {
            return shown.format(LocalDate.parse(value.asText()));
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
        try {
            LocalDate d = t.matches("[+]\\d{1,4}") ? LocalDate.now(clock).plusDays(Long.parseLong(t.substring(1)))
                    : LocalDate.parse(t, read);
            return new Typed.Understood(TextNode.valueOf(d.toString()), shown.format(d));
        } catch (DateTimeException e) {
            return new Typed.Wrong(DeskWords.text("entry.notDate", t, shown.format(LocalDate.now(clock))));
        }
    }
}

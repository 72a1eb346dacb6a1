package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.ResolverStyle;
import java.time.chrono.IsoChronology;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.copperbook.desk.text.DeskWords;

/** A date: the locale's way, ISO, or a number of days from today as "+14". Kept as an ISO date. */
public final class DateEntry implements Entry {

    private final DateTimeFormatter shown;
    private final List<DateTimeFormatter> read;
    private final Clock clock;

    public DateEntry() {
        this(Locale.getDefault(Locale.Category.FORMAT), Clock.systemDefaultZone());
    }

    DateEntry(Locale locale, Clock clock) {
        String local = DateTimeFormatterBuilder.getLocalizedDateTimePattern(FormatStyle.SHORT, null,
                IsoChronology.INSTANCE, locale);
        String full = local.replaceAll("y+", "uuuu");
        String loose = full.replaceAll("d+", "d").replaceAll("M+", "M");
        this.shown = DateTimeFormatter.ofPattern(full, locale);
        // Strict, so that a date that no calendar has is wrong and not the last of the month.
        this.read = Stream.of("uuuu-M-d", loose, loose.replace("uuuu", "uu"))
                .map(p -> DateTimeFormatter.ofPattern(p, locale).withResolverStyle(ResolverStyle.STRICT)).toList();
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
        LocalDate d = t.matches("[+]\\d{1,4}") ? LocalDate.now(clock).plusDays(Long.parseLong(t.substring(1)))
                : parsed(t);
        return d == null ? new Typed.Wrong(DeskWords.text("entry.notDate", t, shown.format(LocalDate.now(clock))))
                : new Typed.Understood(TextNode.valueOf(d.toString()), shown.format(d));
    }

    private LocalDate parsed(String text) {
        for (DateTimeFormatter f : read) {
            try {
                return LocalDate.parse(text, f);
            } catch (DateTimeException notThisWay) {
                continue;
            }
        }
        return null;
    }
}

package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;

/**
 * A moment: a day in the locale's way or as ISO 8601 has it with a time ("2026-05-04 14:30"), a time of today ("14:30"), or
 * "now". Kept as an instant in UTC.
 */
public final class MomentEntry implements Entry {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm");
    private static final Pattern DAY_AND_TIME = Pattern.compile("(.+?)[T ](\\d{1,2}:\\d{2})");

    private final Days days;
    private final Clock clock;

    public MomentEntry() {
        this(Locale.getDefault(Locale.Category.FORMAT), Clock.systemDefaultZone());
    }

    MomentEntry(Locale locale, Clock clock) {
        this.days = new Days(locale);
        this.clock = clock;
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isTextual()) {
            return "";
        }
        try {
            return days.moment(Instant.parse(value.asText()), clock.getZone());
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
            Instant at = moment(t);
            return new Typed.Understood(TextNode.valueOf(at.toString()), days.moment(at, clock.getZone()));
        } catch (DateTimeException e) {
            return new Typed.Wrong(DeskWords.text("entry.notMoment", t,
                    days.moment(clock.instant().truncatedTo(ChronoUnit.HOURS), clock.getZone())));
        }
    }

    private Instant moment(String t) {
        if (t.equalsIgnoreCase(DeskWords.text("entry.now"))) {
            return clock.instant().truncatedTo(ChronoUnit.MINUTES);
        }
        Matcher both = DAY_AND_TIME.matcher(t);
        LocalDateTime at = both.matches() ? day(both.group(1)).atTime(LocalTime.parse(both.group(2), TIME))
                : t.indexOf(':') > 0 ? LocalDate.now(clock).atTime(LocalTime.parse(t, TIME)) : day(t).atStartOfDay();
        return at.atZone(clock.getZone()).toInstant();
    }

    private LocalDate day(String t) {
        return days.read(t).orElseThrow(() -> new DateTimeException(t));
    }
}

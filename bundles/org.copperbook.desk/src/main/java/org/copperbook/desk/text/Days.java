package org.copperbook.desk.text;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Days and moments as people write them: the locale's short way with all digits of the year, hours from 0 to 23. */
public final class Days {

    private final DateTimeFormatter shown;
    private final DateTimeFormatter withTime;
    private final List<DateTimeFormatter> read;

    public Days(Locale locale) {
        String local = DateTimeFormatterBuilder.getLocalizedDateTimePattern(FormatStyle.SHORT, null,
                IsoChronology.INSTANCE, locale);
        String full = local.replaceAll("y+", "uuuu");
        String loose = full.replaceAll("d+", "d").replaceAll("M+", "M");
        shown = DateTimeFormatter.ofPattern(full, locale);
        withTime = DateTimeFormatter.ofPattern(full + " HH:mm", locale);
        // Strict, so that a date that no calendar has is wrong and not the last of the month.
        read = Stream.of("uuuu-M-d", loose, loose.replace("uuuu", "uu"))
                .map(p -> DateTimeFormatter.ofPattern(p, locale).withResolverStyle(ResolverStyle.STRICT)).toList();
    }

    /** As the screen's locale has it. */
    public static Days ofLocale() {
        return new Days(Locale.getDefault(Locale.Category.FORMAT));
    }

    /** A day, for the screen. */
    public String day(LocalDate day) {
        return shown.format(day);
    }

    /** A moment where this screen is, to the minute. */
    public String moment(Instant at) {
        return moment(at, ZoneId.systemDefault());
    }

    /** A moment in a zone, to the minute. */
    public String moment(Instant at, ZoneId zone) {
        return withTime.format(at.atZone(zone));
    }

    /** The day that a text means, in the locale's way or as ISO 8601 has it; empty when it means none. */
    public Optional<LocalDate> read(String text) {
        for (DateTimeFormatter f : read) {
            try {
                return Optional.of(LocalDate.parse(text.strip(), f));
            } catch (DateTimeException notThisWay) {
                continue;
            }
        }
        return Optional.empty();
    }
}

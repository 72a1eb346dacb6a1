package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.text.DeskWords;

/** A moment: "2026-05-04 14:30", a time of today ("14:30"), or "now". Kept as an instant in UTC. */
public final class MomentEntry implements Entry {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final DateTimeFormatter READ = DateTimeFormatter.ofPattern("uuuu-M-d H:mm")
            .withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm");

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-M-d")
            .withResolverStyle(ResolverStyle.STRICT);

    private final Clock clock;

    public MomentEntry() {
        this(Clock.systemDefaultZone());
    }

    MomentEntry(Clock clock) {
        this.clock = clock;
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isTextual()) {
            return "";
        }
        try {
            return SHOWN.format(Instant.parse(value.asText()).atZone(clock.getZone()));
        } catch (DateTimeException e) {
            return value.asText();
        }
    }

    @Override
    public Typed read(String text) {
        String t = text.strip().replace('T', ' ');
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        try {
            Instant at = moment(t);
            return new Typed.Understood(TextNode.valueOf(at.toString()), SHOWN.format(at.atZone(clock.getZone())));
        } catch (DateTimeException e) {
            return new Typed.Wrong(DeskWords.text("entry.notMoment", t));
        }
    }

    private Instant moment(String t) {
        ZoneId zone = clock.getZone();
        if (t.equalsIgnoreCase(DeskWords.text("entry.now"))) {
            return clock.instant().truncatedTo(ChronoUnit.MINUTES);
        }
        if (t.indexOf(' ') > 0) {
            return LocalDateTime.parse(t, READ).atZone(zone).toInstant();
        }
        if (t.indexOf(':') > 0) {
            return LocalDate.now(clock).atTime(LocalTime.parse(t, TIME)).atZone(zone).toInstant();
        }
        return LocalDate.parse(t, DAY).atStartOfDay(zone).toInstant();
    }
}

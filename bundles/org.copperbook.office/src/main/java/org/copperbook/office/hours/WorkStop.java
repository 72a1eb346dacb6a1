package org.copperbook.office.hours;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.copperbook.jobs.work.Hours;

/** Stopping work that was begun: the hours since then, and the entry that is made of them. */
final class WorkStop {

    /** Nobody works longer in one go, so that somebody forgot to stop; common practice, no source. */
    static final BigDecimal LONGEST = BigDecimal.valueOf(12);

    private static final int MINUTES = 60;
    private static final int DECIMALS = 2;

    private WorkStop() {
    }

    /** Whole minutes in hours, to the hundredth; a clock that was set back counts as no time. */
    static BigDecimal hoursSince(Instant since, Instant now) {
        long minutes = Math.max(0, Duration.between(since, now).toMinutes());
        return BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(MINUTES), DECIMALS, RoundingMode.HALF_UP);
    }

    /** Whether so many hours in one go are asked about before they are written down. */
    static boolean tooLong(BigDecimal hours) {
        return hours.compareTo(LONGEST) > 0;
    }

    /** Takes the running work of a person out of the hours of a job and puts an entry in its place, on the day it was begun. */
    static ObjectNode put(ObjectNode hours, Hours.Running running, BigDecimal worked) {
        ArrayNode still = hours.withArray("running");
        for (int i = still.size() - 1; i >= 0; i--) {
            if (running.who().equals(still.get(i).path("who").asText())) {
                still.remove(i);
            }
        }
        if (still.isEmpty()) {
            hours.remove("running");
        }
        ObjectNode row = hours.withArray("entries").addObject().put("who", running.who());
        if (running.trade() != null) {
            row.put("trade", running.trade());
        }
        row.put("date", LocalDate.ofInstant(running.since(), ZoneId.systemDefault()).toString()).put("hours", worked);
        return hours;
    }
}

package org.copperbook.office.board;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.Waiting;
import org.copperbook.jobs.booking.Standing.WaitingFor;

/**
 * What somebody says a job waits for.
 *
 * @param what   what for; null for nothing
 * @param since  since which day
 * @param reason why; may be empty
 */
record WaitingAnswer(WaitingFor what, LocalDate since, String reason) {

    /** The standing with this in it; a day that was not changed keeps its hour, and today is now. */
    Standing in(Standing before, Instant now, ZoneId zone) {
        Waiting was = before.waiting();
        if (what == null) {
            return new Standing(before.schema(), null, before.closure(), before.more());
        }
        boolean sameDay = was != null && was.since() != null && LocalDate.ofInstant(was.since(), zone).equals(since);
        Instant at = sameDay ? was.since() : LocalDate.ofInstant(now, zone).equals(since) ? now.truncatedTo(ChronoUnit.SECONDS)
                : since.atStartOfDay(zone).toInstant();
        return new Standing(before.schema(), new Waiting(what, at, reason.isBlank() ? null : reason.strip(),
                was == null ? Map.of() : was.more()), before.closure(), before.more());
    }
}

package org.copperbook.office.board;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.store.BoardRow;

/** What the board says of a job. */
final class BoardWords {

    private final Words words;
    private final LocalDate today;
    private final ZoneId zone;

    BoardWords(Words words, LocalDate today, ZoneId zone) {
        this.words = words;
        this.today = today;
        this.zone = zone;
    }

    /** Whether the day promised has passed while work is owed. */
    boolean late(BoardRow row) {
        return row.step().owed() && row.job().promised() != null && row.job().promised().isBefore(today);
    }

    /** The step it stands at. */
    String step(BoardRow row) {
        return words.of(row.step());
    }

    /** The customer and the machine, as far as they are known. */
    String whose(BoardRow row) {
        String said = Stream.of(row.job().customer(), row.job().machine()).filter(s -> !s.isBlank())
                .collect(Collectors.joining(", "));
        return said.isEmpty() ? words.text("board.nameless") : said;
    }

    /** The day promised, and how late that is. */
    String due(BoardRow row) {
        if (row.job().promised() == null) {
            return words.text("board.noDate");
        }
        String day = Days.ofLocale().day(row.job().promised());
        return late(row) ? words.text("board.late", day, ChronoUnit.DAYS.between(row.job().promised(), today)) : day;
    }

    /** What it waits for, since when and why; empty when it does not wait. */
    String waiting(BoardRow row) {
        return row.waiting().map(w -> {
            String what = w.what().map(words::of).orElse(words.text("board.waitsUnsaid"));
            String since = w.since() == null ? words.text("board.waits", what)
                    : words.text("board.waitsSince", what, days(w.since()));
            return w.reason().isBlank() ? since : since + ": " + w.reason();
        }).orElse("");
    }

    /** Why a late job is late, as far as it is on record; empty for others. */
    String why(BoardRow row) {
        if (!late(row)) {
            return "";
        }
        return row.waiting().isPresent() ? waiting(row)
                : words.text("board.why", step(row), days(row.job().changedAt()));
    }

    /** How long it has been in the shop. */
    String age(BoardRow row) {
        return row.bookedAt() == null ? "" : words.text("board.days", days(row.bookedAt()));
    }

    /** How long nothing was saved of it. */
    String untouched(BoardRow row) {
        return words.text("board.days", days(row.job().changedAt()));
    }

    /** The lines of its card, the number first. */
    List<String> card(BoardRow row) {
        return List.of(row.job().number() + (row.job().voided() ? " " + words.text("board.void") : ""), whose(row),
                due(row), row.waiting().isPresent() ? waiting(row) : words.text("board.untouched", days(row.job().changedAt())));
    }

    private long days(Instant since) {
        return Math.max(0, ChronoUnit.DAYS.between(LocalDate.ofInstant(since, zone), today));
    }
}

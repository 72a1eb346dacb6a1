package org.copperbook.office.hours;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.work.Hours;

/** Begins and stops the work of whoever works at the screen; stopping makes an entry. Each is one step to be undone. */
final class Timer {

    private static final int MINUTES = 60;
    private static final int DECIMALS = 2;

    private final PageSite site;
    private final Words words;
    private final Trades trades;

    Timer(PageSite site, Words words, Trades trades) {
        this.site = site;
        this.words = words;
        this.trades = trades;
    }

    String begin() {
        Optional<String> who = site.who();
        if (who.isEmpty()) {
            return words.text("stock.whoFirst");
        }
        Optional<Hours.Running> running = running(who.get());
        if (running.isPresent()) {
            return words.text("hours.runsAlready", time(running.get().since()));
        }
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        Optional<String> trade = trades.usual(hours(), who.get());
        return site.document().change(site.key(), "/running", tree -> {
            ObjectNode row = tree.withArray("running").addObject().put("who", who.get()).put("since", now.toString());
            trade.ifPresent(t -> row.put("trade", t));
            return tree;
        }).orElseGet(() -> words.text("hours.begun", site.shop().nameOf(who.get()), time(now)));
    }

    String stop() {
        Optional<String> who = site.who();
        if (who.isEmpty()) {
            return words.text("stock.whoFirst");
        }
        Optional<Hours.Running> running = running(who.get());
        if (running.isEmpty() || running.get().since() == null) {
            return words.text("hours.notBegun");
        }
        BigDecimal worked = hoursSince(running.get().since(), Instant.now());
        LocalDate day = LocalDate.ofInstant(running.get().since(), ZoneId.systemDefault());
        return site.document().change(site.key(), "/entries", tree -> {
            ArrayNode still = tree.withArray("running");
            for (int i = still.size() - 1; i >= 0; i--) {
                if (who.get().equals(still.get(i).path("who").asText())) {
                    still.remove(i);
                }
            }
            if (still.isEmpty()) {
                tree.remove("running");
            }
            ObjectNode row = tree.withArray("entries").addObject().put("who", who.get());
            if (running.get().trade() != null) {
                row.put("trade", running.get().trade());
            }
            row.put("date", day.toString()).put("hours", worked);
            return tree;
        }).orElseGet(() -> words.text("hours.stopped", worked, time(running.get().since())));
    }

    /** Whole minutes in hours, to the hundredth; a clock that was set back counts as no time. */
    static BigDecimal hoursSince(Instant since, Instant now) {
        long minutes = Math.max(0, Duration.between(since, now).toMinutes());
        return BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(MINUTES), DECIMALS, RoundingMode.HALF_UP);
    }

    private Optional<Hours> hours() {
        return site.document().part(site.key(), Hours.class);
    }

    private Optional<Hours.Running> running(String who) {
        return hours().map(Hours::running).orElse(List.of()).stream().filter(r -> who.equals(r.who())).findFirst();
    }

    private static String time(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.SHORT).withZone(ZoneId.systemDefault()).format(at);
    }
}

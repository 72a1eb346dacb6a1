package org.copperbook.office.hours;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.work.Hours;

/** Begins and stops the work of whoever works at the screen; stopping makes an entry. Each is one step to be undone. */
final class Timer {

    private final PageSite site;
    private final Words words;
    private final Trades trades;
    private Instant askedAbout;

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
        BigDecimal worked = WorkStop.hoursSince(running.get().since(), Instant.now());
        if (WorkStop.tooLong(worked) && !running.get().since().equals(askedAbout)) {
            askedAbout = running.get().since();
            return words.text("hours.long", worked, time(askedAbout), WorkStop.LONGEST);
        }
        return site.document().change(site.key(), "/entries", tree -> WorkStop.put(tree, running.get(), worked))
                .orElseGet(() -> words.text("hours.stopped", worked, time(running.get().since())));
    }

    private Optional<Hours> hours() {
        return site.document().part(site.key(), Hours.class);
    }

    private Optional<Hours.Running> running(String who) {
        return hours().map(Hours::running).orElse(List.of()).stream().filter(r -> who.equals(r.who())).findFirst();
    }

    static String time(Instant at) {
        return Days.ofLocale().moment(at);
    }
}

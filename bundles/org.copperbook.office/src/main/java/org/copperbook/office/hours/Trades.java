package org.copperbook.office.hours;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.copperbook.desk.page.PageSite;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.work.Hours;

/** The trades that hours can be booked at: those of the shop's rates and of the job's quotes. */
final class Trades {

    private final PageSite site;

    Trades(PageSite site) {
        this.site = site;
    }

    Set<String> all() {
        Set<String> all = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        Job job = site.document().job();
        Stream.concat(site.shop().rates().rates().stream().map(LabourRates.Rate::trade),
                job.keys(PartKind.QUOTE).stream().map(k -> (Quote) job.parts().get(k)).flatMap(q -> q.alternatives().stream())
                        .flatMap(a -> a.lines().stream()).map(QuoteLine::trade))
                .filter(t -> t != null && !t.isBlank()).map(String::strip).forEach(all::add);
        return all;
    }

    /** The trade at which somebody was booked last; else the one that is called like a role of the person. */
    Optional<String> usual(Optional<Hours> hours, String who) {
        List<String> booked = hours.map(Hours::entries).orElse(List.of()).stream()
                .filter(e -> who.equals(e.who()) && e.trade() != null && !e.trade().isBlank()).map(Hours.Entry::trade).toList();
        if (!booked.isEmpty()) {
            return Optional.of(booked.get(booked.size() - 1));
        }
        return site.shop().person(who).stream().flatMap(p -> p.roles().stream())
                .flatMap(r -> all().stream().filter(t -> t.equalsIgnoreCase(r.name()))).findFirst();
    }
}

package org.copperbook.office.hours;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.ProposedLine;
import org.copperbook.jobs.quote.ProposedLines;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;

/** Sets the wire aside that the windings of the job need, by their computed mass, less what it has already. */
final class WireOfJob {

    private final PageSite site;
    private final Words words;

    WireOfJob(PageSite site, Words words) {
        this.site = site;
        this.words = words;
    }

    /** Kilograms of each size that the windings need with the usual allowance; for the window's thread. */
    Map<String, BigDecimal> needed() {
        Map<String, BigDecimal> needed = new TreeMap<>();
        new ProposedLines(site.document().job(), site.shop().stock(), site.shop().rates())
                .of(LocalDate.now(), site.verdicts()).stream()
                .filter(l -> l.work() == ProposedLine.Work.WIRE && l.quantity() != null)
                .forEach(l -> needed.merge(l.about(), l.quantity(), BigDecimal::add));
        return needed;
    }

    /** Sets aside what is still needed, all of it or nothing, and says what came of it; not for the window's thread. */
    String reserve(Map<String, BigDecimal> needed, String job, String who) {
        List<StockMove> moves = new ArrayList<>();
        List<String> made = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        try {
            List<StockItem> items = site.store().stock().items().stream().map(s -> (StockItem) s.part())
                    .filter(i -> i.kind() == StockItem.Kind.WIRE && i.unit() == StockUnit.KG
                            && !Boolean.TRUE.equals(i.retired())).toList();
            Map<String, BigDecimal> has = issued(job);
            needed.forEach((size, kg) -> {
                Optional<StockItem> item = items.stream().filter(i -> i.size() != null && isSame(size, i.size()))
                        .max(java.util.Comparator.comparing(StockItem::free));
                BigDecimal still = kg.subtract(items.stream().filter(i -> i.size() != null && isSame(size, i.size()))
                        .map(i -> i.reservedFor(job).add(has.getOrDefault(i.code(), BigDecimal.ZERO)))
                        .reduce(BigDecimal.ZERO, BigDecimal::add)).setScale(StockItem.DECIMALS, RoundingMode.HALF_UP)
                        .stripTrailingZeros();
                if (item.isEmpty()) {
                    lacking.add(words.text("hours.notKept", size, kg));
                } else if (still.signum() > 0) {
                    moves.add(new StockMove(item.get().code(), StockMovement.of(StockMovement.Kind.RESERVE, still, job,
                            Instant.now())));
                    made.add(words.text("hours.wireOf", still, item.get().code()));
                }
            });
            if (!moves.isEmpty()) {
                site.store().stock().move(moves, who);
            }
        } catch (StoreException e) {
            return e.getMessage();
        }
        StringBuilder said = new StringBuilder(moves.isEmpty() ? words.text("hours.wireThere")
                : words.text("hours.wireReserved", String.join(", ", made)));
        lacking.forEach(l -> said.append(' ').append(l));
        return said.toString();
    }

    /** What the job got of each item and has not given back. */
    private Map<String, BigDecimal> issued(String job) {
        Map<String, BigDecimal> issued = new TreeMap<>();
        for (StockEntry e : site.store().stock().movesFor(job)) {
            StockMovement.Kind kind = e.movement().kind();
            if (kind == StockMovement.Kind.ISSUE || kind == StockMovement.Kind.RETURN) {
                issued.merge(e.item().code(), kind == StockMovement.Kind.ISSUE ? e.movement().quantity()
                        : e.movement().quantity().negate(), BigDecimal::add);
            }
        }
        return issued;
    }

    private static boolean isSame(String a, String b) {
        return InsulatedWire.round(a).isPresent() ? InsulatedWire.round(a).equals(InsulatedWire.round(b))
                : a.strip().equalsIgnoreCase(b.strip());
    }
}

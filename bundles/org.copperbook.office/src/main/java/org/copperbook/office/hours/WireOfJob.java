package org.copperbook.office.hours;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.WireGrades;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.office.WireNeed;
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
        return WireNeed.bySize(site.document().job(), site.shop());
    }

    /** Grades of enamel that the windings name for each size; for the window's thread. */
    Map<String, Set<Integer>> grades(Set<String> sizes) {
        return sizes.stream().collect(Collectors.toMap(s -> s, s -> WireGrades.of(site.document().job(), s)));
    }

    /** Sets aside what is still needed, all of it or nothing, and says what came of it; not for the window's thread. */
    String reserve(Map<String, BigDecimal> needed, Map<String, Set<Integer>> grades, String job, String who) {
        List<StockMove> moves = new ArrayList<>();
        List<String> made = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        try {
            List<StockItem> items = site.store().stock().items().stream().map(s -> (StockItem) s.part()).filter(WireNeed::isWire)
                    .toList();
            List<StockEntry> moved = site.store().stock().movesFor(job);
            needed.forEach((size, kg) -> {
                Optional<StockItem> item = items.stream().filter(i -> InsulatedWire.isSame(size, i.size())
                        && WireGrades.fits(i.grade(), grades.get(size))).max(java.util.Comparator.comparing(StockItem::free));
                BigDecimal still = WireNeed.of(size, Map.of(size, kg), items, moved, job).still();
                if (item.isEmpty()) {
                    lacking.add(grades.get(size).isEmpty() ? words.text("hours.notKept", size, kg)
                            : words.text("hours.notKeptInGrade", size, kg, grades.get(size).stream().sorted()
                                    .map(String::valueOf).collect(Collectors.joining(", "))));
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
}

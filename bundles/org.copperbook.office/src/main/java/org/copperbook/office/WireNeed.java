package org.copperbook.office;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.ProposedLine;
import org.copperbook.jobs.quote.ProposedLines;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.store.stock.StockEntry;

/**
 * Wire of one size that the windings of a job need, against what the job has of it on the shelf.
 *
 * @param needed   kilograms that the windings take by their computed mass, with the usual allowance
 * @param setAside kilograms set aside for the job, of all items of the size
 * @param issued   kilograms that the job got and has not given back
 */
public record WireNeed(BigDecimal needed, BigDecimal setAside, BigDecimal issued) {

    /** Kilograms of each size that the windings of a job need; none when they do not say yet. */
    public static Map<String, BigDecimal> bySize(Job job, Shop shop) {
        Map<String, BigDecimal> needed = new TreeMap<>();
        // What is judged about the job changes nothing about its wire.
        new ProposedLines(job, shop.stock(), shop.rates()).of(LocalDate.now(), List.of()).stream()
                .filter(l -> l.work() == ProposedLine.Work.WIRE && l.quantity() != null)
                .forEach(l -> needed.merge(needed.keySet().stream().filter(k -> InsulatedWire.isSame(k, l.about())).findFirst()
                        .orElse(l.about()), l.quantity(), BigDecimal::add));
        return needed;
    }

    /**
     * What a job has of a size, against what it needs.
     *
     * @param size   the size, as the trade writes it
     * @param needed kilograms by size
     * @param items  what is kept in stock
     * @param moves  what was moved for the job
     */
    public static WireNeed of(String size, Map<String, BigDecimal> needed, Collection<StockItem> items, List<StockEntry> moves,
            String job) {
        BigDecimal needs = needed.entrySet().stream().filter(e -> InsulatedWire.isSame(e.getKey(), size)).map(Map.Entry::getValue)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal aside = BigDecimal.ZERO;
        BigDecimal issued = BigDecimal.ZERO;
        Map<String, BigDecimal> got = issued(moves);
        for (StockItem i : items) {
            if (isWire(i) && InsulatedWire.isSame(size, i.size())) {
                aside = aside.add(i.reservedFor(job));
                issued = issued.add(got.getOrDefault(i.code(), BigDecimal.ZERO));
            }
        }
        return new WireNeed(needs, aside, issued);
    }

    /** Kilograms to be set aside still, to the gram; zero or less when the job has enough. */
    public BigDecimal still() {
        return needed.subtract(setAside).subtract(issued).setScale(StockItem.DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    }

    /** Whether an item is wire that is kept by weight and size. */
    public static boolean isWire(StockItem i) {
        return i.kind() == StockItem.Kind.WIRE && i.unit() == StockUnit.KG && i.size() != null
                && !Boolean.TRUE.equals(i.retired());
    }

    private static Map<String, BigDecimal> issued(List<StockEntry> moves) {
        Map<String, BigDecimal> issued = new TreeMap<>();
        for (StockEntry e : moves) {
            StockMovement.Kind kind = e.movement().kind();
            if (kind == StockMovement.Kind.ISSUE || kind == StockMovement.Kind.RETURN) {
                issued.merge(e.item().code(), StockMovement.Kind.ISSUE == kind ? e.movement().quantity()
                        : e.movement().quantity().negate(), BigDecimal::add);
            }
        }
        return issued;
    }
}

package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.work.Hours;

/**
 * What a job took against what the customer agreed to, at cost: hours of each trade, and material by its sort. Prices of the
 * quote stand before mark-up, those of the stock are the ones in force when it was issued. Stock and outside work are in the
 * shop's currency; the cost in a quote of another currency is named apart and neither converted nor compared.
 *
 * @param agreed whether there is an agreed quote to compare with
 * @param labour one line for each trade
 * @param material one line for each sort of material
 * @param issued what went out of stock to the job, by item
 * @param outside one line for each line of outside work in the quote, and for what was sent out beside them
 * @param unpriced outside work whose cost is not known yet, by its name
 * @param elsewhere cost agreed in another currency than the shop's: by sort of material and, for outside work, by its text
 * @param currency currency of the agreed quote, ISO 4217; the shop's where it names none
 */
public record Actuals(boolean agreed, List<Line> labour, List<Line> material, List<Issued> issued, List<Line> outside,
        List<String> unpriced, List<Line> elsewhere, String currency) {

    /** Sorts of material that a quote tells apart. */
    public enum Sort { WIRE, DIODES, BEARINGS, OTHER }

    /**
     * One comparison.
     *
     * @param what    trade, name of a {@link Sort}, or text of a line of outside work; empty where it has none
     * @param planned hours, or cost; zero when nothing was agreed
     * @param actual  hours, or cost
     */
    public record Line(String what, BigDecimal planned, BigDecimal actual) {

        /** What was used beyond the plan; below zero when it was less. */
        public BigDecimal difference() {
            return actual.subtract(planned);
        }
    }

    /**
     * Stock that went to the job.
     *
     * @param item     the item as last moved
     * @param quantity what went out less what came back
     * @param cost     the same at the prices then in force; what had no price counts nothing
     * @param priced   whether everything had a price
     */
    public record Issued(StockItem item, BigDecimal quantity, BigDecimal cost, boolean priced) {
    }

    /**
     * Compares.
     *
     * @param moved    the items after each movement for this job, the oldest first
     * @param currency the shop's currency, ISO 4217
     */
    public static Actuals of(Job job, Collection<StockItem> moved, String currency) {
        String quoted = AgreedQuote.newest(job).map(Quote::currency).filter(c -> !c.isBlank()).map(String::strip)
                .orElse(currency);
        boolean comparable = quoted.equalsIgnoreCase(currency);
        WireNamed wire = new WireNamed(job);
        Optional<Quote.Alternative> agreed = AgreedQuote.newest(job).flatMap(AgreedQuote::alternative);
        List<QuoteLine> lines = agreed.map(Quote.Alternative::lines).orElse(List.of());
        Map<String, BigDecimal> planned = new TreeMap<>();
        for (QuoteLine l : lines) {
            if (AgreedQuote.isHours(l)) {
                planned.merge(AgreedQuote.trade(l), l.quantity(), BigDecimal::add);
            }
        }
        Map<String, BigDecimal> worked = job.part(org.copperbook.jobs.PartKind.HOURS, Hours.class).map(Hours::byTrade)
                .orElse(Map.of());
        List<Issued> issued = issued(moved);
        Map<String, BigDecimal> cost = new TreeMap<>();
        issued.forEach(i -> cost.merge(sort(i.item().kind()).name(), i.cost(), BigDecimal::add));
        Map<String, BigDecimal> costPlanned = new TreeMap<>();
        for (QuoteLine l : lines) {
            sort(l, wire).filter(s -> l.quantity() != null && l.unitPrice() != null)
                    .ifPresent(s -> costPlanned.merge(s.name(), l.quantity().multiply(l.unitPrice()), BigDecimal::add));
        }
        OutsideCost outside = OutsideCost.of(job, lines);
        List<Line> elsewhere = new ArrayList<>();
        if (!comparable) {
            elsewhere.addAll(lines(costPlanned, Map.of()));
            elsewhere.addAll(lines(outside.planned(), Map.of()));
        }
        return new Actuals(agreed.isPresent(), lines(planned, worked), lines(comparable ? costPlanned : Map.of(), cost), issued,
                lines(comparable ? outside.planned() : Map.of(), outside.paid()), outside.unpriced(), List.copyOf(elsewhere),
                quoted);
    }

    private static List<Line> lines(Map<String, BigDecimal> planned, Map<String, BigDecimal> actual) {
        Map<String, Line> lines = new TreeMap<>();
        planned.forEach((what, p) -> lines.put(what, new Line(what, p, actual.getOrDefault(what, BigDecimal.ZERO))));
        actual.forEach((what, a) -> lines.putIfAbsent(what, new Line(what, BigDecimal.ZERO, a)));
        return List.copyOf(lines.values());
    }

    private static List<Issued> issued(Collection<StockItem> moved) {
        Map<String, Issued> sums = new LinkedHashMap<>();
        for (StockItem item : moved) {
            StockMovement m = item.movement();
            if (m.kind() == StockMovement.Kind.ISSUE || m.kind() == StockMovement.Kind.RETURN) {
                BigDecimal q = m.kind() == StockMovement.Kind.ISSUE ? m.quantity() : m.quantity().negate();
                Issued before = sums.getOrDefault(item.code(), new Issued(item, BigDecimal.ZERO, BigDecimal.ZERO, true));
                sums.put(item.code(), new Issued(item, before.quantity().add(q),
                        m.price() == null ? before.cost() : before.cost().add(q.multiply(m.price())),
                        before.priced() && m.price() != null));
            }
        }
        List<Issued> all = new ArrayList<>(sums.values());
        all.removeIf(i -> i.quantity().signum() == 0);
        return List.copyOf(all);
    }

    private static Sort sort(StockItem.Kind kind) {
        return switch (kind) {
            case WIRE -> Sort.WIRE;
            case DIODE, SUPPRESSOR -> Sort.DIODES;
            case BEARING -> Sort.BEARINGS;
            case LEAD, RESIN, SLOT_INSULATION, SLEEVING, WEDGE, TAPE, OTHER -> Sort.OTHER;
        };
    }

    /** The sort of a line of material; labour, outside work and the like come from no shelf. */
    private static Optional<Sort> sort(QuoteLine line, WireNamed wire) {
        if (line.kind() == null) {
            return Optional.empty();
        }
        return switch (line.kind()) {
            case MATERIAL -> Optional.of(wire.isWire(line) ? Sort.WIRE : Sort.OTHER);
            case DIODE_SET -> Optional.of(Sort.DIODES);
            case BEARING -> Optional.of(Sort.BEARINGS);
            case LABOUR, OUTSIDE_WORK, OTHER -> Optional.empty();
        };
    }
}

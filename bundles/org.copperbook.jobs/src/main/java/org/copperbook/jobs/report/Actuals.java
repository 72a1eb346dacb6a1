package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.WireNamed;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.work.Hours;

/**
 * What a job took against what the customer agreed to, at cost: hours of each trade, and material by its sort. Prices of the
 * quote stand before mark-up, those of the stock are the ones in force when it was issued. Stock and outside work are in the
 * shop's currency; the cost in a quote of another currency is named apart and neither converted nor compared. What was agreed
 * to in several quotes counts together.
 *
 * @param agreed whether there is an agreed quote to compare with
 * @param labour one line for each trade
 * @param material one line for each sort of material
 * @param issued what went out of stock to the job, by item
 * @param outside one line for each line of outside work in the quote, and for what was sent out beside them
 * @param unpriced outside work whose cost is not known yet, by its name
 * @param elsewhere cost agreed in other currencies than the shop's
 */
public record Actuals(boolean agreed, List<Line> labour, List<Line> material, List<Issued> issued, List<Line> outside,
        List<String> unpriced, List<Elsewhere> elsewhere) {

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
     * Cost agreed in another currency than the shop's, with nothing to compare it with.
     *
     * @param currency ISO 4217
     * @param what     name of a {@link Sort}, or text of a line of outside work
     * @param cost     as agreed
     */
    public record Elsewhere(String currency, String what, BigDecimal cost) {
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
        WireNamed wire = new WireNamed(job);
        Map<String, List<QuoteLine>> agreed = new TreeMap<>();
        for (Quote q : job.quotes()) {
            AgreedQuote.alternative(q).ifPresent(a -> agreed.computeIfAbsent(currency(q, currency), c -> new ArrayList<>())
                    .addAll(a.lines()));
        }
        Map<String, BigDecimal> planned = byName();
        agreed.values().stream().flatMap(List::stream).filter(AgreedQuote::isHours)
                .forEach(l -> planned.merge(AgreedQuote.trade(l), l.quantity(), BigDecimal::add));
        Map<String, BigDecimal> worked = job.part(org.copperbook.jobs.PartKind.HOURS, Hours.class).map(Hours::byTrade)
                .orElse(Map.of());
        List<Issued> issued = issued(moved);
        Map<String, BigDecimal> cost = byName();
        issued.forEach(i -> cost.merge(sort(i.item().kind()).name(), i.cost(), BigDecimal::add));
        List<QuoteLine> here = agreed.getOrDefault(currency, List.of());
        OutsideCost outside = OutsideCost.of(job, here);
        List<Elsewhere> elsewhere = new ArrayList<>();
        agreed.forEach((other, lines) -> {
            if (!other.equals(currency)) {
                material(lines, wire).forEach((sort, c) -> elsewhere.add(new Elsewhere(other, sort, c)));
                OutsideCost.of(job, lines).planned().forEach((text, c) -> elsewhere.add(new Elsewhere(other, text, c)));
            }
        });
        return new Actuals(!agreed.isEmpty(), lines(planned, worked), lines(material(here, wire), cost), issued,
                lines(outside.planned(), outside.paid()), outside.unpriced(), List.copyOf(elsewhere));
    }

    private static String currency(Quote q, String shops) {
        String quoted = q.currency() == null ? "" : q.currency().strip();
        return quoted.isEmpty() || quoted.equalsIgnoreCase(shops) ? shops : quoted.toUpperCase(Locale.ROOT);
    }

    private static Map<String, BigDecimal> material(List<QuoteLine> lines, WireNamed wire) {
        Map<String, BigDecimal> planned = byName();
        for (QuoteLine l : lines) {
            sort(l, wire).filter(s -> l.quantity() != null && l.unitPrice() != null)
                    .ifPresent(s -> planned.merge(s.name(), l.quantity().multiply(l.unitPrice()), BigDecimal::add));
        }
        return planned;
    }

    private static Map<String, BigDecimal> byName() {
        return new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    }

    private static List<Line> lines(Map<String, BigDecimal> planned, Map<String, BigDecimal> actual) {
        Map<String, Line> lines = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
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

package org.copperbook.jobs.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.InsulatedWire;

/** The wire among the items, as the list of wire that winding and quotes work with; and the way from the older list. */
public final class WireOnShelf {

    private WireOnShelf() {
    }

    /** The wire among items, by weight; nothing when there is no item of wire, so that the older list counts. */
    public static Optional<WireStock> of(Collection<StockItem> items) {
        List<StockItem> wire = items.stream().filter(i -> i.kind() == StockItem.Kind.WIRE).toList();
        if (wire.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new WireStock(WireStock.SCHEMA, wire.stream()
                .filter(i -> i.unit() == StockUnit.KG && i.size() != null && !Boolean.TRUE.equals(i.retired()))
                .map(i -> new WireStock.Spool(i.size(), i.grade(), i.onHand().doubleValue(), i.price(), Map.of())).toList(),
                Map.of()));
    }

    /**
     * Items for the spools of an older list, each with what is on hand as its first delivery. Fields of newer versions come
     * along; weights are kept in grams, and one below zero becomes nothing on hand.
     *
     * @param taken codes that stand for other items already
     * @param name  what to call a size of wire
     */
    public static List<StockItem> items(WireStock old, Collection<String> taken, String name, Instant at) {
        Set<String> codes = new HashSet<>();
        taken.forEach(c -> codes.add(c.toLowerCase(Locale.ROOT)));
        List<StockItem> items = new ArrayList<>();
        for (WireStock.Spool s : old.spools()) {
            BigDecimal kg = s.onHandKg() == null || s.onHandKg().isNaN() || s.onHandKg() < 0 ? BigDecimal.ZERO
                    : BigDecimal.valueOf(s.onHandKg()).setScale(StockItem.DECIMALS, RoundingMode.HALF_EVEN)
                            .stripTrailingZeros().min(StockRules.MOST);
            StockItem.Shape shape = s.size() == null ? null : InsulatedWire.round(s.size()).isPresent()
                    ? StockItem.Shape.ROUND : StockItem.Shape.STRIP;
            StockItem empty = new StockItem(StockItem.SCHEMA, free(code(s), codes), StockItem.Kind.WIRE, name, s.size(),
                    s.grade(), shape, StockUnit.KG, null, s.pricePerKg(), null, null, null, null, null, s.more());
            StockMovement in = StockMovement.of(StockMovement.Kind.RECEIVE, kg, null, at);
            items.add(kg.signum() > 0 && StockRules.move(empty, in, BigDecimal.ZERO) instanceof StockRules.Done d ? d.item()
                    : empty);
        }
        return items;
    }

    private static String code(WireStock.Spool s) {
        String size = s.size() == null ? "wire" : s.size().strip().replace(',', '.').replaceAll("(?i)\\s*mm$", "")
                .replaceAll("[^A-Za-z0-9.]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        return "W-" + (size.isEmpty() ? "wire" : size.substring(0, Math.min(size.length(), 24)))
                + (s.grade() == null ? "" : "-G" + s.grade());
    }

    private static String free(String code, Set<String> codes) {
        String tried = code;
        for (int n = 2; !codes.add(tried.toLowerCase(Locale.ROOT)); n++) {
            tried = code + "-" + n;
        }
        return tried;
    }
}

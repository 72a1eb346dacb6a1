package org.copperbook.jobs.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.WireStock;
import org.junit.jupiter.api.Test;

class WireOnShelfTest {

    private static final Instant AT = Instant.parse("2026-03-02T08:15:00Z");

    private static WireStock.Spool spool(String size, Integer grade, Double kg, String price) {
        return new WireStock.Spool(size, grade, kg, price == null ? null : new BigDecimal(price), Map.of());
    }

    @Test
    void anOlderListBecomesItemsWithItsWeightsPricesAndUnknownFields() throws Exception {
        WireStock old = new WireStock(1, List.of(spool("0.800 mm", 2, 28.0, "16.8"), spool("0,800 mm", 2, 3.5, "16.8"),
                spool("AWG 16", 1, 0.0, null), spool("2.5 x 5.6 mm", null, 12.25, "18"),
                new WireStock.Spool("1.00 mm", 2, 9.4, null, Map.of("maker", new TextNode("Quill")))), Map.of());
        List<StockItem> items = WireOnShelf.items(old, List.of("w-1.00-g2"), "Wire", AT);
        assertEquals(List.of("W-0.800-G2", "W-0.800-G2-2", "W-AWG-16-G1", "W-2.5-x-5.6", "W-1.00-G2-2"),
                items.stream().map(StockItem::code).toList());
        assertEquals(List.of("28", "3.5", "0", "12.25", "9.4"), items.stream().map(i -> i.onHand().toPlainString()).toList());
        assertEquals(List.of(StockItem.Shape.ROUND, StockItem.Shape.ROUND, StockItem.Shape.ROUND, StockItem.Shape.STRIP,
                StockItem.Shape.ROUND), items.stream().map(StockItem::shape).toList());
        assertEquals(StockMovement.Kind.RECEIVE, items.get(0).movement().kind());
        assertEquals(null, items.get(2).movement());
        assertEquals(new TextNode("Quill"), items.get(4).more().get("maker"));
        for (StockItem item : items) {
            PartJson json = new PartJson();
            assertEquals(item, json.read(item.key(), json.write(item)));
        }
        WireStock now = WireOnShelf.of(items).orElseThrow();
        assertEquals(old.spools().stream().map(s -> List.of(s.size(), Optional.ofNullable(s.grade()), s.onHandKg(),
                Optional.ofNullable(s.pricePerKg()))).toList(), now.spools().stream().map(s -> List.of(s.size(),
                        Optional.ofNullable(s.grade()), s.onHandKg(), Optional.ofNullable(s.pricePerKg()))).toList());
    }

    @Test
    void withoutWireAmongTheItemsTheOlderListCounts() {
        assertTrue(WireOnShelf.of(List.of()).isEmpty());
        assertTrue(WireOnShelf.of(List.of(StockItem.of("6205", StockItem.Kind.BEARING, "Bearing", StockUnit.PC))).isEmpty());
    }

    @Test
    void aWeightThatIsNoneAndASizeOfSignsAloneStillBecomeItems() {
        WireStock odd = new WireStock(1, List.of(spool(null, null, null, null), spool("\u00d8 / \"", null, -2.0, null),
                spool("x".repeat(90), null, 1e300, null)), Map.of());
        List<StockItem> items = WireOnShelf.items(odd, List.of(), "Wire", AT);
        assertEquals(3, items.stream().map(StockItem::key).distinct().count());
        assertEquals(BigDecimal.ZERO, items.get(1).onHand());
        assertTrue(items.get(2).onHand().compareTo(StockRules.MOST) <= 0);
    }
}

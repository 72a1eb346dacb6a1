package org.copperbook.jobs.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockUnit;
import org.junit.jupiter.api.Test;

/** What fits is decided by the items and records written here. */
class PartsOnShelfTest {

    private static StockItem item(String code, StockItem.Kind kind, String size, String price, int onHand) {
        return new StockItem(1, code, kind, code, size, null, null, StockUnit.PC, null, price == null ? null : new BigDecimal(price),
                null, BigDecimal.valueOf(onHand), null, null, null, null);
    }

    private static StockItem bearing(String size, String price, int onHand) {
        return item("B-" + size.replaceAll("[^A-Za-z0-9]", "-"), StockItem.Kind.BEARING, size, price, onHand);
    }

    private static RectifierSet set(String fitted) {
        try {
            return (RectifierSet) new PartJson().read(PartKey.parse("rectifier"),
                    "{\"schema\":1,\"circuit\":\"FULL_WAVE\"" + fitted + "}");
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aBearingFitsByItsDesignationWithEverySuffixThatIsAskedFor() {
        PartsOnShelf shelf = new PartsOnShelf(List.of(bearing("6314 C3", "64", 3), bearing("6314-2RS/C3", "71", 2),
                bearing("16314", "5", 9), bearing("631", "4", 9), bearing("6312", "40", 0)));
        PartsOnShelf.Fit fit = shelf.bearing("6314").orElseThrow();
        assertEquals("6314 C3", fit.taken().size());
        assertEquals(new BigDecimal("64"), fit.price());
        assertEquals(List.of("6314-2RS/C3"), fit.others().stream().map(StockItem::size).toList());
        assertEquals("6314-2RS/C3", shelf.bearing("6314 2rs c3").orElseThrow().taken().size());
        assertTrue(shelf.bearing("6314 C4").isEmpty(), "another clearance is another bearing");
        assertEquals("6312", shelf.bearing("6312").orElseThrow().taken().size(), "what is out has a price all the same");
        assertTrue(shelf.bearing(" ").isEmpty());
        assertTrue(shelf.bearing(null).isEmpty());
        assertEquals("6312", shelf.bearingNamed("bearing 6312, drive end").orElseThrow().taken().size());
        assertEquals("6314-2RS/C3", shelf.bearingNamed("Bearing 6314-2RS, drive end").orElseThrow().taken().size(),
                "an open one does not do");
        assertEquals("6314 C3", shelf.bearingNamed("bearing 6314 C3 drive end").orElseThrow().taken().size());
        assertTrue(shelf.bearingNamed("bearing 6314 C4").isEmpty());
        assertTrue(shelf.bearingNamed("bearing 6314 and bearing 6312").isEmpty(), "two have no one price");
    }

    @Test
    void whatIsOnTheShelfGoesFirstThenTheDearerAndWhatHasNoPriceOrIsRetiredNever() {
        StockItem retired = new StockItem(1, "old", StockItem.Kind.BEARING, "old", "6308", null, null, StockUnit.PC, null,
                BigDecimal.TEN, null, BigDecimal.TEN, null, null, true, null);
        PartsOnShelf shelf = new PartsOnShelf(List.of(item("a", StockItem.Kind.BEARING, "6308", "30", 0),
                item("b", StockItem.Kind.BEARING, "6308", "20", 1), item("c", StockItem.Kind.BEARING, "6308", "25", 1),
                item("d", StockItem.Kind.BEARING, "6308", null, 5), retired));
        PartsOnShelf.Fit fit = shelf.bearing("6308").orElseThrow();
        assertEquals("c", fit.taken().code());
        assertEquals(List.of("b", "a"), fit.others().stream().map(StockItem::code).toList());
    }

    @Test
    void diodesFitByTheMakersPartOrByNoLessThanTheRatingOfTheSet() {
        PartsOnShelf shelf = new PartsOnShelf(List.of(item("D-70-16", StockItem.Kind.DIODE, "70 A, 1600 V", "15", 20),
                item("D-40-12-K", StockItem.Kind.DIODE, "40 A, 1200 V", "9.60", 20),
                item("D-40-08", StockItem.Kind.DIODE, "40 A, 800 V", "7", 20),
                item("V", StockItem.Kind.SUPPRESSOR, "70 A, 1600 V", "1", 20)));
        PartsOnShelf.Fit fit = shelf.diodes(set(",\"fitted\":{\"averageA\":35,\"repetitivePeakV\":1000}")).orElseThrow();
        assertEquals("D-40-12-K", fit.taken().code());
        assertEquals(0, new BigDecimal("57.6").compareTo(fit.price()), "six diodes at 9.60");
        assertEquals(List.of("D-70-16"), fit.others().stream().map(StockItem::code).toList());
        assertTrue(shelf.diodes(set(",\"fitted\":{\"averageA\":35,\"repetitivePeakV\":2000}")).isEmpty(), "none stands that");
        assertTrue(shelf.diodes(set(",\"fitted\":{\"averageA\":35}")).isEmpty(), "the voltage is not known");
        assertTrue(shelf.diodes(set("")).isEmpty(), "nothing says what the set is");
        assertEquals("D-40-08", shelf.diodes(set(",\"fitted\":{\"makersPart\":\"D-40-08\",\"averageA\":35,\"repetitivePeakV\":1000}"))
                .map(f -> f.taken().code()).orElse(null));
    }
}

package org.copperbook.jobs.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;
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
                    "{\"schema\":1" + (fitted.contains("circuit") ? "" : ",\"circuit\":\"FULL_WAVE\"") + fitted + "}");
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

    private static StockItem diode(String code, String name, String size, String price) {
        return new StockItem(1, code, StockItem.Kind.DIODE, name, size, null, null, StockUnit.PC, null, new BigDecimal(price), null,
                BigDecimal.TEN, null, null, null, null);
    }

    private static String taken(List<PartsOnShelf.Fit> fits) {
        return fits.stream().map(f -> f.pieces() + " x " + f.taken().code() + " " + f.base()).collect(Collectors.joining(", "));
    }

    private static String positions(String... plates) {
        return ",\"positions\":[" + IntStream.range(0, plates.length).mapToObj(i -> "{\"position\":\"D" + (i + 1) + "\"" + plates[i] + "}")
                .collect(Collectors.joining(",")) + "]";
    }

    private static final String RATED = ",\"fitted\":{\"averageA\":35,\"repetitivePeakV\":1000}";
    private static final String POSITIVE = ",\"plate\":\"POSITIVE\"";
    private static final String NEGATIVE = ",\"plate\":\"NEGATIVE\"";

    @Test
    void diodesFitByTheMakersPartOrByNoLessThanTheRatingOfTheSet() {
        PartsOnShelf shelf = new PartsOnShelf(List.of(item("D-70-16", StockItem.Kind.DIODE, "70 A, 1600 V", "15", 20),
                item("D-40-12", StockItem.Kind.DIODE, "40 A, 1200 V", "9.60", 20),
                item("D-40-08", StockItem.Kind.DIODE, "40 A, 800 V", "7", 20),
                item("V", StockItem.Kind.SUPPRESSOR, "70 A, 1600 V", "1", 20)));
        PartsOnShelf.Fit fit = shelf.diodes(set(RATED)).get(0);
        assertEquals("6 x D-40-12 null", taken(shelf.diodes(set(RATED))), "no item says which electrode is on its stud");
        assertEquals(0, new BigDecimal("57.6").compareTo(fit.price()), "six diodes at 9.60");
        assertEquals(List.of("D-70-16"), fit.others().stream().map(StockItem::code).toList());
        assertEquals(List.of(), shelf.diodes(set(",\"fitted\":{\"averageA\":35,\"repetitivePeakV\":2000}")), "none stands that");
        assertEquals(List.of(), shelf.diodes(set(",\"fitted\":{\"averageA\":35}")), "the voltage is not known");
        assertEquals(List.of(), shelf.diodes(set("")), "nothing says what the set is");
        assertEquals("6 x D-40-08 null", taken(shelf.diodes(set(
                ",\"fitted\":{\"makersPart\":\"D-40-08\",\"averageA\":35,\"repetitivePeakV\":1000}"))));
    }

    @Test
    void eachPolarityOfASetHasAnItemOfItsOwnWhereTheStockNamesWhatIsOnTheStud() {
        StockItem k = diode("K", "Stud diode, cathode to stud", "40 A, 1200 V", "9.60");
        StockItem a = diode("A", "Stud diode", "40 A, 1200 V, Anode am Gewinde", "10.10");
        StockItem unsaid = diode("U", "Stud diode", "40 A, 1200 V", "8");
        assertEquals("3 x K CATHODE_BASE, 3 x A ANODE_BASE", taken(new PartsOnShelf(List.of(a, k)).diodes(set(RATED))));
        assertEquals("3 x K CATHODE_BASE, 3 x A ANODE_BASE", taken(new PartsOnShelf(List.of(a, k, unsaid)).diodes(set(RATED))),
                "an item that says it goes before one that does not");
        assertEquals("3 x K CATHODE_BASE, 3 x U ANODE_BASE", taken(new PartsOnShelf(List.of(k, unsaid)).diodes(set(RATED))));
        assertEquals("6 x K null", taken(new PartsOnShelf(List.of(k)).diodes(set(RATED))), "of the anode there is none");
        assertEquals("3 x K CATHODE_BASE, 3 x A ANODE_BASE", taken(new PartsOnShelf(List.of(a, k, unsaid))
                .diodes(set(",\"fitted\":{\"makersPart\":\"K / A\"}"))), "the maker's numbers of both");
    }

    @Test
    void theRecordSaysHowManyOfEachPolarityASetHas() {
        StockItem k = diode("K", "cathode base", "40 A, 1200 V", "9.60");
        StockItem a = diode("A", "anode base", "40 A, 1200 V", "10.10");
        PartsOnShelf shelf = new PartsOnShelf(List.of(k, a));
        // Three studs of each polarity, each three on one heat sink: TM 5-6115-545-34, para. 9-6.
        assertEquals("3 x K CATHODE_BASE, 3 x A ANODE_BASE", taken(shelf.diodes(set(positions(NEGATIVE, POSITIVE, NEGATIVE, POSITIVE,
                NEGATIVE, POSITIVE) + RATED))));
        String half = RATED + ",\"circuit\":\"HALF_WAVE\"";
        assertEquals("3 x A ANODE_BASE", taken(shelf.diodes(set(positions(NEGATIVE, NEGATIVE, NEGATIVE) + half))));
        assertEquals("3 x K CATHODE_BASE", taken(shelf.diodes(set(positions(",\"basePolarity\":\"CATHODE_BASE\"", POSITIVE, POSITIVE)
                + half))), "what sits there, where the plate is not written down");
        assertEquals(List.of(), new PartsOnShelf(List.of(k)).diodes(set(positions(NEGATIVE, NEGATIVE, NEGATIVE) + half)),
                "the other polarity does not do");
        assertEquals(1, shelf.diodes(set(half)).size());
        assertEquals(null, shelf.diodes(set(half)).get(0).base(), "nobody knows which");
    }

    @Test
    void aTextNamesWhatIsOnTheStudWhenItNamesOneElectrodeOnly() {
        for (String cathode : List.of("Stud diode, cathode to stud", "Kathode am Gewinde", "c\u00e1todo en la base", "CATHODE")) {
            assertEquals(Optional.of(BasePolarity.CATHODE_BASE), PartsOnShelf.base(cathode), cathode);
        }
        for (String anode : List.of("anode base", "Anode am Gewinde", "\u00c1nodo en la base")) {
            assertEquals(Optional.of(BasePolarity.ANODE_BASE), PartsOnShelf.base(anode), anode);
        }
        for (String neither : List.of("", "stud diode 40 A", "anodised sink, cathode on top", "canode")) {
            assertEquals(Optional.empty(), PartsOnShelf.base(neither), neither);
        }
        assertEquals(Optional.empty(), PartsOnShelf.base(null));
    }
}

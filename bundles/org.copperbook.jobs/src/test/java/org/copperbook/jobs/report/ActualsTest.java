package org.copperbook.jobs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockMovement.Kind;
import org.copperbook.jobs.stock.StockRules;
import org.copperbook.jobs.stock.StockUnit;
import org.junit.jupiter.api.Test;

/** Planned against used; every expected value is added up from the lines written here. */
class ActualsTest {

    private static final String QUOTE = "{'schema':1,'revision':1,'currency':'EUR','alternatives':[{'name':'rewind','lines':["
            + "{'kind':'LABOUR','trade':'winder','quantity':30,'unit':'h','unitPrice':50},"
            + "{'kind':'LABOUR','trade':'winder','quantity':8,'unit':'h','unitPrice':50},"
            + "{'kind':'LABOUR','trade':'tester','quantity':4,'unit':'h','unitPrice':48},"
            + "{'kind':'MATERIAL','text':'wire','wire':'1.18 mm','quantity':10,'unit':'kg','unitPrice':16},"
            + "{'kind':'MATERIAL','text':'liners','quantity':1,'unit':'set','unitPrice':38.5},"
            + "{'kind':'BEARING','quantity':2,'unit':'pc','unitPrice':30},"
            + "{'kind':'OUTSIDE_WORK','quantity':1,'unit':'pc','unitPrice':200}]}],'approval':{'agreed':true}}";
    private static final String HOURS = "{'schema':1,'entries':["
            + "{'who':'p1','trade':'winder','date':'2026-03-02','hours':33.5},"
            + "{'who':'p2','trade':'winder ','date':'2026-03-03','hours':7},"
            + "{'who':'p2','trade':'fitter','date':'2026-03-03','hours':1.25},{'who':'p2'}]}";

    private static final String LINE = "{'kind':'LABOUR','trade':'winder','quantity':3,'unit':'h','unitPrice':50}";

    private static Job job(String... keysAndTexts) {
        Map<PartKey, Part> parts = new TreeMap<>();
        try {
            for (int i = 0; i < keysAndTexts.length; i += 2) {
                PartKey key = PartKey.parse(keysAndTexts[i]);
                parts.put(key, new PartJson().read(key, keysAndTexts[i + 1].replace('\'', '"')));
            }
        } catch (org.copperbook.jobs.json.BadRecordException e) {
            throw new AssertionError(e);
        }
        return new Job("j1", "1", parts);
    }

    private static List<StockItem> moved(StockItem item, Object... kindsAndAmounts) {
        List<StockItem> all = new ArrayList<>();
        StockItem now = item;
        for (int i = 0; i < kindsAndAmounts.length; i += 2) {
            Kind kind = (Kind) kindsAndAmounts[i];
            StockMovement m = StockMovement.of(kind, new BigDecimal(kindsAndAmounts[i + 1].toString()),
                    kind == Kind.RECEIVE ? null : "j1", null);
            now = ((StockRules.Done) StockRules.move(now, m, new BigDecimal(1000))).item();
            if (kind != Kind.RECEIVE) {
                all.add(now);
            }
        }
        return all;
    }

    private static StockItem item(String code, StockItem.Kind kind, StockUnit unit, String price) {
        return new StockItem(1, code, kind, code, null, null, null, unit, null, price == null ? null : new BigDecimal(price),
                null, null, null, null, null, null);
    }

    private static List<String> said(List<Actuals.Line> lines) {
        return lines.stream().map(l -> l.what() + " " + plain(l.planned()) + " " + plain(l.actual()) + " "
                + plain(l.difference())).toList();
    }

    private static String plain(BigDecimal n) {
        return n.signum() == 0 ? "0" : n.stripTrailingZeros().toPlainString();
    }

    @Test
    void hoursOfEachTradeAndMaterialOfEachSortStandAgainstWhatWasAgreed() {
        List<StockItem> moved = moved(item("W", StockItem.Kind.WIRE, StockUnit.KG, "16.5"), Kind.RECEIVE, 20, Kind.RESERVE, 10,
                Kind.ISSUE, 12, Kind.RETURN, 1);
        moved.addAll(moved(item("B", StockItem.Kind.BEARING, StockUnit.PC, null), Kind.RECEIVE, 9, Kind.ISSUE, 2));
        moved.addAll(moved(item("R", StockItem.Kind.RESIN, StockUnit.KG, "13"), Kind.RECEIVE, 9, Kind.ISSUE, 2, Kind.RETURN, 2));
        Actuals a = Actuals.of(job("quote/1", QUOTE, "hours", HOURS), moved, "EUR");
        assertTrue(a.agreed());
        assertEquals(List.of("fitter 0 1.25 1.25", "tester 4 0 -4", "winder 38 40.5 2.5"), said(a.labour()));
        // 12 kg out and 1 kg back at 16.50; liners 38.50 planned and no such thing issued; bearings without a price.
        assertEquals(List.of("BEARINGS 60 0 -60", "OTHER 38.5 0 -38.5", "WIRE 160 181.5 21.5"), said(a.material()));
        assertEquals(List.of("W 11 true", "B 2 false"), a.issued().stream()
                .map(i -> i.item().code() + " " + plain(i.quantity()) + " " + i.priced()).toList());
    }

    @Test
    void aLineInKilogramsThatNamesASizeOfTheJobsWindingsIsWireThoughItHasNoFieldForIt() {
        String quote = "{'schema':1,'revision':1,'alternatives':[{'name':'a','lines':["
                + "{'kind':'MATERIAL','text':'Winding wire, 12 x 1,18 mm in hand','quantity':2,'unit':'kg','unitPrice':16},"
                + "{'kind':'MATERIAL','text':'wire 11.18 mm and 1.18 mm² of lead','quantity':1,'unit':'kg','unitPrice':7},"
                + "{'kind':'MATERIAL','text':'sleeving 1.18 mm','quantity':1,'unit':'m','unitPrice':5}]}],"
                + "'approval':{'agreed':true}}";
        String winding = "{'schema':1,'role':'main-stator','asWound':false,'wire':[{'size':'1.180 mm','strands':12}]}";
        assertEquals(List.of("OTHER 12 0 -12", "WIRE 32 0 -32"), said(Actuals.of(job("quote/1", quote,
                "winding/main-stator", winding), List.of(), "EUR").material()));
        assertEquals(List.of("OTHER 44 0 -44"), said(Actuals.of(job("quote/1", quote), List.of(), "EUR").material()),
                "without a winding nothing says that it is wire");
    }

    @Test
    void costInAnotherCurrencyIsNamedApartAndNotComparedButHoursAre() {
        List<StockItem> moved = moved(item("W", StockItem.Kind.WIRE, StockUnit.KG, "16.5"), Kind.RECEIVE, 20, Kind.ISSUE, 2);
        Actuals a = Actuals.of(job("quote/1", QUOTE.replace("'currency':'EUR'", "'currency':'USD'"), "hours", HOURS,
                "hand-back", "{'schema':1,'outside':[{'what':'shaft','cost':120}]}"), moved, "EUR");
        assertEquals(List.of("fitter 0 1.25 1.25", "tester 4 0 -4", "winder 38 40.5 2.5"), said(a.labour()));
        assertEquals(List.of("WIRE 0 33 33"), said(a.material()));
        assertEquals(List.of("USD BEARINGS 60", "USD OTHER 38.5", "USD WIRE 160", "USD  200"), a.elsewhere().stream()
                .map(e -> e.currency() + " " + e.what() + " " + plain(e.cost())).toList());
        assertEquals("120", plain(a.outside().stream().map(Actuals.Line::actual).reduce(BigDecimal.ZERO, BigDecimal::add)));
        assertEquals("0", plain(a.outside().stream().map(Actuals.Line::planned).reduce(BigDecimal.ZERO, BigDecimal::add)));
    }

    @Test
    void withoutAnAgreementWhatWasUsedIsStillSaid() {
        Actuals a = Actuals.of(job("hours", HOURS, "quote/1", QUOTE.replace("true", "false")), List.of(), "EUR");
        assertFalse(a.agreed());
        assertEquals(List.of("fitter 0 1.25 1.25", "winder 0 40.5 40.5"), said(a.labour()));
    }

    @Test
    void hoursDoneAreNotAheadAnyMoreAndMoreThanAgreedIsNotLessThanNothing() {
        assertEquals(Map.of("winder", 38_000L, "tester", 4_000L), AgreedQuote.hoursLeft(job("quote/1", QUOTE)));
        assertEquals(Map.of("tester", 4_000L), AgreedQuote.hoursLeft(job("quote/1", QUOTE, "hours", HOURS)));
        assertEquals(Map.of("winder", 37_500L, "tester", 4_000L), AgreedQuote.hoursLeft(job("quote/1", QUOTE, "hours",
                "{'schema':1,'entries':[{'trade':'Winder','hours':0.5}]}")));
    }

    @Test
    void whatWasAgreedToInASecondQuoteCountsBesideTheFirstAndAnOpenThirdTakesNothingAway() {
        String more = "{'schema':1,'revision':1,'alternatives':[{'name':'cheap','lines':["
                + "{'kind':'LABOUR','trade':'Winder','quantity':100,'unit':'h','unitPrice':50}]},{'name':'good','lines':["
                + "{'kind':'LABOUR','trade':'WINDER','quantity':5,'unit':' H ','unitPrice':50},"
                + "{'kind':'LABOUR','trade':'winder','quantity':2,'unitPrice':50}]}],"
                + "'approval':{'agreed':true,'alternative':'good'}}";
        Job job = job("quote/1", QUOTE, "quote/2", more, "quote/10", more.replace("true", "false"), "hours",
                HOURS.replace("'trade':'winder '", "'trade':'WINDER'"));
        assertEquals(PartKey.quote(10), AgreedQuote.newest(job).orElseThrow());
        // 30 + 8 of the first, 5 + 2 of the second: 45 agreed, 33.5 + 7 worked.
        assertEquals(Map.of("winder", 4_500L, "tester", 4_000L), AgreedQuote.hoursLeft(job));
        assertEquals(List.of("fitter 0 1.25 1.25", "tester 4 0 -4", "winder 45 40.5 -4.5"), said(Actuals.of(job, List.of(),
                "EUR").labour()));
    }

    @Test
    void anAgreementThatDoesNotSayToWhatCountsForNothingAndSaysWhy() throws Exception {
        String two = "{'schema':1,'revision':1,'alternatives':[{'name':'a','lines':[" + LINE + "]},{'name':'b','lines':["
                + LINE + "]},{'name':'b','lines':[" + LINE + "]}],'approval':{'agreed':true%s}}";
        assertEquals(Optional.of(AgreedQuote.Lack.NONE_NAMED), lack(two.formatted("")));
        assertEquals(Optional.of(AgreedQuote.Lack.UNKNOWN), lack(two.formatted(",'alternative':'c'")));
        assertEquals(Optional.of(AgreedQuote.Lack.SEVERAL), lack(two.formatted(",'alternative':'b'")));
        assertEquals(Optional.empty(), lack(two.formatted(",'alternative':' a '")));
        assertEquals(Optional.empty(), lack(two.replace("true", "false").formatted("")));
        assertEquals(Map.of(), AgreedQuote.hours(job("quote/1", two.formatted(",'alternative':'b'"))));
        assertEquals(Map.of("winder", 3_000L), AgreedQuote.hours(job("quote/1", two.formatted(",'alternative':'a'"))));
    }

    private static Optional<AgreedQuote.Lack> lack(String quote) {
        return AgreedQuote.lack(job("quote/1", quote).quotes().get(0));
    }

    @Test
    void outsideWorkStandsAgainstTheLineOfTheQuoteThatItNamesOrIsCalledLike() {
        String quote = QUOTE.replace("{'kind':'OUTSIDE_WORK','quantity':1,'unit':'pc','unitPrice':200}",
                "{'kind':'OUTSIDE_WORK','text':'Grind shaft','quantity':1,'unitPrice':200},"
                + "{'kind':'OUTSIDE_WORK','text':'Balance','quantity':2,'unitPrice':45}");
        Actuals a = Actuals.of(job("quote/1", quote, "hand-back", "{'schema':1,'outside':["
                + "{'what':'shaft','quoteLine':'grind shaft ','cost':230.5},{'what':'balance','cost':80},"
                + "{'what':'spray metal','cost':60},{'what':'crane','out':'2026-03-02'},{'what':'not sent yet'}]}"), List.of(), "EUR");
        assertEquals(List.of("Balance 90 80 -10", "Grind shaft 200 230.5 30.5", "spray metal 0 60 60"), said(a.outside()));
        assertEquals(List.of("crane"), a.unpriced());
    }

    @Test
    void theOnlyLineOfOutsideWorkTakesWhatNamesNone() {
        Actuals a = Actuals.of(job("quote/1", QUOTE, "hand-back",
                "{'schema':1,'outside':[{'what':'shaft','cost':120},{'what':'rotor','cost':90}]}"), List.of(), "EUR");
        assertEquals(List.of(" 200 210 10"), said(a.outside()));
        assertEquals(List.of(" 200 0 -200"), said(Actuals.of(job("quote/1", QUOTE), List.of(), "EUR").outside()));
    }
}

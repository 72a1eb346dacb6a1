package org.copperbook.jobs.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.ProposedLine.Lacking;
import org.copperbook.jobs.quote.ProposedLine.Work;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;

/** Density of copper 8.89 g/cm3: IEC 60028. Everything else is arithmetic on the inputs, written out beside each. */
class ProposedLinesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private final PartJson json = new PartJson();

    private Job job(Map<PartKey, String> parts) {
        Map<PartKey, Part> read = new TreeMap<>();
        parts.forEach((k, text) -> {
            try {
                read.put(k, json.read(k, (com.fasterxml.jackson.databind.node.ObjectNode) json.mapper().readTree(text)));
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        });
        return new Job("j", "2026-0001", read);
    }

    private static WireStock stock(String size, String price) {
        return new WireStock(1, List.of(new WireStock.Spool(size, 2, 9.0, price == null ? null : new BigDecimal(price),
                Map.of())), Map.of());
    }

    private static List<ProposedLine> proposed(Job job, WireStock stock, LabourRates rates, Work work) {
        return new ProposedLines(job, stock, rates).of(DAY, List.of()).stream().filter(p -> p.work() == work).toList();
    }

    private static final PartKey ROTOR = PartKey.windingAsFound(WindingRole.MAIN_ROTOR);

    private static String rotor(String wire, String meanTurn) {
        return "{\"schema\":1,\"role\":\"main-rotor\",\"asWound\":false," + wire + meanTurn + "\"groups\":[{\"number\":1,\"coils\":[{\"turns\":100},"
                + "{\"turns\":100}]},{\"number\":2,\"coils\":[{\"turns\":300}]}]}";
    }

    @Test
    void wireIsProposedBySizeWithItsMassAndThePriceOnTheShelf() {
        // 500 turns x 0.8 m = 400 m. Two strands of 1.25 mm: 2 x pi/4 x 1.25^2 = 2.4544 mm2 -> 0.98174 dm3 x 8.89 = 8.7277 kg
        // one of 1.00 mm: 0.7854 mm2 -> 0.31416 dm3 x 8.89 = 2.7929 kg; each with 5 %: 9.164 and 2.933
        Job job = job(Map.of(ROTOR, rotor("\"wire\":[{\"size\":\"1.25 mm\",\"strands\":2},{\"size\":\"1.00 mm\",\"strands\":1}],",
                "\"meanTurnM\":0.8,")));
        List<ProposedLine> wire = proposed(job, stock("1.250 mm", "14.50"), LabourRates.none(), Work.WIRE);
        assertEquals(List.of("1.25 mm", "1.00 mm"), wire.stream().map(ProposedLine::about).toList());
        assertEquals(new BigDecimal("9.164"), wire.get(0).quantity());
        assertEquals(new BigDecimal("14.50"), wire.get(0).price(), "1.250 mm on the shelf is the same wire");
        assertEquals(new BigDecimal("2.933"), wire.get(1).quantity());
        assertNull(wire.get(1).price(), "what the shelf has no price for has none");
        assertEquals(1, proposed(job, stock("1 mm", null), LabourRates.none(), Work.BALANCING).size(), "a rotor is balanced");
    }

    private static WireStock.Spool spool(Integer grade, String price) {
        return new WireStock.Spool("1.00 mm", grade, 9.0, new BigDecimal(price), Map.of());
    }

    private static ProposedLine graded(String grade, WireStock.Spool... shelf) {
        Job job = new ProposedLinesTest().job(Map.of(ROTOR, rotor("\"wire\":[{\"size\":\"1.00 mm\",\"strands\":1" + grade + "}],",
                "\"meanTurnM\":0.8,")));
        return proposed(job, new WireStock(1, List.of(shelf), Map.of()), LabourRates.none(), Work.WIRE).get(0);
    }

    @Test
    void wireHasThePriceOfTheGradeThatItsWindingNames() {
        WireStock.Spool one = spool(1, "17");
        WireStock.Spool two = spool(2, "16");
        WireStock.Spool unsaid = spool(null, "15");
        assertEquals(new BigDecimal("16"), graded(",\"grade\":2", one, two, unsaid).price(), "not the dearer one of grade 1");
        assertEquals(Set.of(2), graded(",\"grade\":2", one).grades());
        assertNull(graded(",\"grade\":2", one).price(), "wire of another grade is not wound");
        assertEquals(new BigDecimal("15"), graded(",\"grade\":2", one, unsaid).price(), "nothing speaks against what names no grade");
        assertEquals(new BigDecimal("17"), graded("", one, two, unsaid).price(), "any will do; the dearest, so that it is not too low");
        ProposedLines lines = new ProposedLines(job(Map.of()), new WireStock(1, List.of(one), Map.of()), LabourRates.none());
        assertEquals(new WirePrice(new BigDecimal("17"), 1, WirePrice.Fit.OTHER), lines.wire("1 mm", Set.of(2)).orElseThrow());
        assertEquals(WirePrice.Fit.RIGHT, lines.wire("1 mm", Set.of(1, 2)).orElseThrow().fit());
        assertEquals(Optional.empty(), lines.wire("1.2 mm", Set.of()));
        assertEquals(Optional.empty(), lines.wire(null, Set.of()));
    }

    @Test
    void whatTheRecordDoesNotSayIsNamedAndNotGuessed() {
        String wire = "\"wire\":[{\"size\":\"1.25 mm\",\"strands\":2}],";
        for (Map.Entry<String, Lacking> e : Map.of(rotor("", "\"meanTurnM\":0.8,"), Lacking.WIRE, rotor(wire, ""),
                Lacking.MEAN_TURN, rotor("\"wire\":[{\"size\":\"thick\",\"strands\":2}],", "\"meanTurnM\":0.8,"),
                Lacking.SIZE, rotor(wire, "\"meanTurnM\":0.8,").replace("\"turns\":300", "\"goSlot\":1"), Lacking.TURNS)
                .entrySet()) {
            List<ProposedLine> lines = proposed(job(Map.of(ROTOR, e.getKey())), stock("1.25 mm", "14"), LabourRates.none(),
                    Work.WIRE);
            assertEquals(1, lines.size(), e.getKey());
            assertEquals(e.getValue(), lines.get(0).lacking(), e.getKey());
            assertNull(lines.get(0).quantity());
        }
    }

    @Test
    void anHourOfEachTradeStandsAtTheRateOfTheDayAndBearingsComeFromThePlate() {
        LabourRates rates = new LabourRates(1, List.of(
                new LabourRates.Rate("winder", new BigDecimal("52"), null, null, Map.of()),
                new LabourRates.Rate("winder", new BigDecimal("58.50"), LocalDate.of(2026, 1, 1), null, Map.of()),
                new LabourRates.Rate("winder", new BigDecimal("61"), LocalDate.of(2027, 1, 1), null, Map.of()),
                new LabourRates.Rate("fitter", new BigDecimal("54"), null, null, Map.of())), Map.of());
        Job job = job(Map.of(PartKey.of(PartKind.NAMEPLATE), "{\"schema\":1,\"bearingDE\":\"6312\",\"bearingNDE\":\" \"}"));
        List<ProposedLine> labour = proposed(job, stock("1 mm", "9"), rates, Work.LABOUR);
        assertEquals(List.of("fitter", "winder"), labour.stream().map(ProposedLine::about).toList());
        assertEquals(new BigDecimal("58.50"), labour.get(1).price());
        assertNull(labour.get(1).quantity(), "nobody knows the hours");
        assertEquals(List.of("6312"), proposed(job, stock("1 mm", "9"), rates, Work.BEARING_DE).stream()
                .map(ProposedLine::about).toList());
        assertTrue(proposed(job, stock("1 mm", "9"), rates, Work.BEARING_NDE).isEmpty());
        assertEquals(Optional.of(new BigDecimal("9")), new ProposedLines(job, stock("1 mm", "9"), rates).wire("1.00 mm", Set.of())
                .map(WirePrice::perKilogram));
    }
}

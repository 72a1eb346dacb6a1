package org.copperbook.sheets.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows become cards by a mapping, or are refused with the reason; nothing is guessed. */
class CardReaderTest {

    private static final PartJson JSON = new PartJson();

    @TempDir
    Path folder;

    private static CardMapping mapping(DecimalMark mark, String... headers) {
        return HeaderGuess.mapping(List.of(headers), WindingRole.MAIN_STATOR, mark);
    }

    private static CardLine line(CardMapping mapping, String... cells) {
        return new CardReader(mapping, mapping.decimal(), "cards.csv", JSON)
                .read(new TableRow(7, List.of(cells).stream().map(TableCell::text).toList()));
    }

    private static String problem(CardMapping mapping, String... cells) {
        CardLine line = line(mapping, cells);
        assertTrue(line.card().isEmpty(), "should be refused");
        return line.problems().get(0).inWords();
    }

    @ParameterizedTest
    @CsvSource({"Nuten,slots,", "Slots,slots,", "No. of poles,poles,", "Bore [cm],bore,cm", "Bohrung mm,bore,mm",
        "Core length (in),core-length,in", "Turns/coil,turns,", "Wire (SWG),wire,SWG", "Wire dia,wire,mm",
        "Rating kVA,apparent-power,kVA", "Leistung [kW],power,kW", "Leistung (kVA),apparent-power,kVA", "Serial No.,serial,", "Coil pitch,span,",
        "strands in hand,strands,", "Card no,card,", "kV,voltage,kV", "RPM,speed,r/min", "Mean length of turn,mean-turn,mm"})
    void titlesAreUnderstood(String header, String field, String unit) {
        CardMapping.Column column = mapping(DecimalMark.DOT, header).columns().get(0);
        if (header.equals("kV")) {
            assertEquals(null, column.field(), "a unit alone is no title that is known");
            return;
        }
        assertEquals(CardField.of(field), column.field(), header);
        assertEquals(unit, column.unit(), header);
    }

    @Test
    void aRowBecomesACard() {
        CardMapping m = mapping(DecimalMark.COMMA, "Karte", "Hersteller", "Leistung kVA", "Nuten", "Polzahl", "Schritt",
                "Windungen", "Draht mm", "Dr\u00e4hte parallel", "Bohrung mm", "Schaltung", "Paketl\u00e4nge cm");
        OldCard card = line(m, "A 12", "Harbour Works", "62,5", "48", "4", "1-11", "5", "1,18", "6", "250,5", "Stern",
                "18").card().orElseThrow();
        WindingData w = card.winding();
        assertEquals("A 12", card.card());
        assertEquals("Harbour Works", card.plate().maker());
        assertEquals(62_500, card.plate().apparentPowerVA());
        assertEquals(48, w.slots());
        assertEquals(4, w.poles());
        assertEquals("1-11", w.span());
        assertEquals(5, w.turnsPerCoil());
        assertEquals("1.18 mm", w.wire().get(0).size());
        assertEquals(6, w.wire().get(0).strands());
        assertEquals(0.2505, w.boreM(), 1e-12);
        assertEquals(0.18, w.coreLengthM(), 1e-12);
        assertEquals(WindingData.Connection.STAR, w.connection());
        assertEquals(7, card.line());
    }

    @Test
    void mixedWiresAndConcentricSpansAreRead() {
        CardMapping m = mapping(DecimalMark.DOT, "Turns", "Wire", "Span");
        WindingData w = line(m, "9", "2 x 1.18 + 1 x 18 SWG", "1-12, 2-11; 3 to 10").card().orElseThrow().winding();
        assertEquals(List.of("1.18 mm", "18 SWG"), w.wire().stream().map(x -> x.size()).toList());
        assertEquals(List.of(2, 1), w.wire().stream().map(x -> x.strands()).toList());
        assertEquals("1-12, 2-11, 3-10", w.span());
    }

    @Test
    void aRowWithAFaultIsRefusedWithItsReason() {
        CardMapping m = mapping(DecimalMark.DOT, "Turns", "Slots", "Span", "Bore mm", "Connection", "Wire", "Poles", "OD mm");
        assertTrue(problem(m, "five").startsWith("Turns \"five\": A whole number"));
        assertTrue(problem(m, "5", "48.5").contains("whole number"));
        assertTrue(problem(m, "5", "48", "8").contains("two ways"));
        assertTrue(problem(m, "5", "36", "1-40").contains("does not fit 36 slots"));
        assertTrue(problem(m, "5", "", "", "25000").contains("unit of the column"));
        assertTrue(problem(m, "5", "", "", "", "sideways").contains("star"));
        assertTrue(problem(m, "5", "", "", "", "", "thick").contains("Not a wire size"));
        assertTrue(problem(m, "5", "", "", "", "", "", "3").contains("even"));
        assertTrue(problem(m, "5", "", "", "300", "", "", "", "250").contains("not larger than the bore"));
        assertTrue(problem(m, "", "48").contains("no turns per coil"));
        assertTrue(problem(m, "", "").contains("No mapped column"));
    }

    @Test
    void whatCouldBeTwoNumbersIsAskedAndNeverGuessed() {
        CardMapping m = mapping(DecimalMark.DOT, "Turns", "Bore mm");
        assertTrue(problem(m, "5", "1,250").contains("1.250 mm or 1250 mm"), problem(m, "5", "1,250"));
        assertEquals(1.25, line(mapping(DecimalMark.DOT, "Turns", "Bore mm"), "5", "1250").card().orElseThrow()
                .winding().boreM());
        assertEquals(0.25025, line(mapping(DecimalMark.COMMA, "Turns", "Bore mm"), "5", "250,25").card().orElseThrow()
                .winding().boreM(), 1e-12);
    }

    @Test
    void aSpanThatASpreadsheetMadeADateIsNamedAsSuch() {
        CardMapping m = mapping(DecimalMark.DOT, "Turns", "Span");
        CardLine line = new CardReader(m, DecimalMark.DOT, "x", JSON).read(new TableRow(2, List.of(
                new TableCell("5", TableCell.Kind.NUMBER), new TableCell("2021-09-01", TableCell.Kind.DATE))));
        assertTrue(line.problems().get(0).inWords().contains("9-1 or 1-9"), line.problems().toString());
    }

    @Test
    void theHeaderRowIsFoundBelowAHeading() {
        List<TableRow> rows = List.of(row(1, "Winding book 1998"), row(3, "", "Slots", "Poles", "Turns"),
                row(4, "x", "48", "4", "5"));
        assertEquals(3, HeaderGuess.headerRow(rows));
        assertEquals(0, HeaderGuess.headerRow(List.of(row(1, "48", "4", "5"))));
    }

    private static TableRow row(int number, String... cells) {
        return new TableRow(number, List.of(cells).stream().map(TableCell::text).toList());
    }

    @Test
    void aMappingIsRememberedForTheSameTitlesOnly() throws Exception {
        CardMappings kept = new CardMappings(folder.resolve("maps"), JSON);
        CardMapping m = mapping(DecimalMark.COMMA, "A", "Slots", "Bore").with(0, CardField.TURNS, null)
                .with(2, CardField.BORE, "cm");
        kept.keep(m);
        assertEquals(Optional.of(m), kept.of(List.of("A", "Slots", "Bore")));
        assertEquals(Optional.empty(), kept.of(List.of("A", "Bore", "Slots")));
        Files.writeString(folder.resolve("maps").resolve(CardMapping.signature(m.headers()) + ".json"), "{nonsense");
        assertEquals(Optional.empty(), kept.of(m.headers()));
    }

    @Test
    void aMappingThatCannotWorkSaysWhy() {
        CardMapping m = mapping(DecimalMark.DOT, "A", "Slots").with(0, CardField.SLOTS, null);
        assertEquals(2, m.problems().size());
        assertEquals(List.of(), mapping(DecimalMark.DOT, "Turns", "Slots").problems());
    }

    @Test
    void theReportNamesEveryRowInBothFormats() throws Exception {
        CardReport report = new CardReport(List.of(new CardReport.Line(5, "Turns", "=1+1", "no \"number\"")));
        Path csv = folder.resolve("r.csv");
        report.write(csv);
        assertTrue(Files.readString(csv).contains("5,\"Turns\",\"'=1+1\",\"no \"\"number\"\"\"\r\n"));
        Path xlsx = folder.resolve("r.xlsx");
        report.write(xlsx);
        CardTable back = CardTable.open(xlsx);
        List<TableRow> rows = new java.util.ArrayList<>();
        back.read(back.detected(), rows::add);
        assertEquals("5", rows.get(1).cell(0).text());
        assertEquals("=1+1", rows.get(1).cell(2).text());
    }
}

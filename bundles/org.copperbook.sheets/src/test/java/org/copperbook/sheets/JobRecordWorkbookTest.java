package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFConnector;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.faults.FaultFinding;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.sheets.WorkbookNotWrittenException.Reason;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JobRecordWorkbookTest {

    @TempDir
    static Path shared;
    private static ReadBack released;

    @TempDir
    Path folder;

    @BeforeAll
    static void theSampleIsWrittenOnce() throws Exception {
        Path file = shared.resolve("released.xlsx");
        new JobRecordWorkbook(ZoneId.of("Europe/Berlin")).write(SampleRecord.job(), SampleVerdicts.all(),
                SampleVerdicts.holdPoints(true), SampleShop.shop(), file);
        released = new ReadBack(file);
    }

    @AfterAll
    static void theSampleIsClosed() throws Exception {
        released.close();
    }

    private ReadBack written(Job job, List<Verdict> verdicts, boolean released, Shop shop) throws Exception {
        Path file = folder.resolve("record.xlsx");
        new JobRecordWorkbook(ZoneId.of("Europe/Berlin")).write(job, verdicts, SampleVerdicts.holdPoints(released), shop, file);
        return new ReadBack(file);
    }

    private static List<String> texts(ReadBack book, String sheet) {
        List<String> texts = new ArrayList<>();
        book.workbook().getSheet(sheet).forEach(r -> r.forEach(c -> {
            if (c.getCellType() == CellType.STRING && !c.getStringCellValue().isEmpty()) {
                texts.add(c.getStringCellValue());
            }
        }));
        return texts;
    }

    @Test
    void everyPartOfTheWorkHasItsSheet() throws Exception {
        List<String> names = new ArrayList<>();
        released.workbook().forEach(s -> names.add(s.getSheetName()));
        assertEquals(List.of("Cover", "Booking and plate", "As found", "Main stator", "Drawing Main stator", "Main rotor",
                "Drawing Main rotor", "Rectifier set", "Core and impregnation", "Test plan", "Run-up", "Charts",
                "Chart numbers", "As found – as left", "Verdicts", "Sign-offs", "Instruments", "Cautions"), names);
    }

    @Test
    void theFaultFindingStandsWithSuspectsEvidenceAndCautions() throws Exception {
        Job job = SampleRecord.job().with(PartKey.of(PartKind.FAULT_FINDING), new FaultFinding(1, List.of("low-output"),
                Map.of("diodes-isolated", "one-shorted", "wiring-check", "right"), "Hum from the exciter.", null));
        try (ReadBack book = written(job, SampleVerdicts.all(), true, SampleShop.shop())) {
            List<String> texts = texts(book, "Fault finding");
            int rectifier = texts.indexOf("rotating rectifier");
            assertTrue(rectifier > 0 && rectifier < texts.indexOf("regulator or its supply"), texts.toString());
            assertTrue(texts.get(rectifier + 1).matches("\\d+\\.\\d %"), texts.get(rectifier + 1));
            assertTrue(texts.get(rectifier + 2).contains("one or more low both ways"), texts.get(rectifier + 2));
            assertTrue(texts.stream().anyMatch(t -> t.contains("What was reported?") && t.contains("voltage low")));
            assertTrue(texts.contains("told or tried"), texts.toString());
            assertTrue(texts.contains("Hum from the exciter."), texts.toString());
            assertTrue(texts.stream().anyMatch(t -> t.startsWith("• ") && t.contains("lock off")), texts.toString());
        }
    }

    @Test
    void heatRunFlashingAndLogStandWithAllThatWasRead() throws Exception {
        RunUp run = (RunUp) new PartJson().read(PartKey.of(PartKind.RUN_UP), """
                {"schema":1,"heatRuns":[{"winding":"main-stator","coldOhm":0.1,"coldCelsius":20,"coolantCelsius":24,"loadA":60,
                "hours":3,"cooling":[{"seconds":40,"ohm":0.1},{"seconds":70,"ohm":0.13}]}],
                "flashings":[{"batteryV":12,"seconds":1,"blockingDiode":true,"leadsOff":false,"positiveTo":"F1"}],
                "storedCurve":{"source":"maker's sheet","points":[{"fieldA":0.5,"lineV":380}]},
                "logs":[{"name":"run.csv","hash":"ab12","rows":1000,"used":998,"points":6,"problems":["Row 7: not a number."]}]}""");
        try (ReadBack book = written(SampleRecord.job().with(PartKey.of(PartKind.RUN_UP), run), SampleVerdicts.all(), true,
                SampleShop.shop())) {
            List<String> texts = texts(book, "Run-up");
            String all = String.join("\n", texts);
            // 0.13 ohm: 1.3 x (235 + 20) - 235 = 96.5 degrees Celsius (IEC 60034-1, 8.6.2.3)
            assertTrue(all.contains("0.13 Ω") && all.contains("60 A, 3 h") && all.contains("24 °C"), all);
            assertTrue(book.workbook().getSheet("Run-up") != null && numbers(book, "Run-up").contains(96.5), all);
            assertTrue(all.contains("blocking diode: yes") && all.contains("off the regulator: no")
                    && all.contains("locked off: not stated"), all);
            assertTrue(all.contains("maker's sheet") && all.contains("0.5 A 380 V"), all);
            assertTrue(all.contains("ab12") && all.contains("Row 7: not a number.") && all.contains("6 points"), all);
        }
    }

    private static List<Double> numbers(ReadBack book, String sheet) {
        List<Double> numbers = new ArrayList<>();
        book.workbook().getSheet(sheet).forEach(r -> r.forEach(c -> {
            if (c.getCellType() == CellType.NUMERIC) {
                numbers.add(Math.round(c.getNumericCellValue() * 1e6) / 1e6);
            }
        }));
        return numbers;
    }

    @Test
    void resistancesStandAtTheReferenceTemperature() throws Exception {
        // IEC 60034-1, 8.6.2.3, k = 235: 93.1 mohm at 17.5 C x (235 + 20)/(235 + 17.5) = 93.1 x 1.0099010 = 94.02 mohm;
        // 94.1 mohm at 21.5 C x 255/256.5 = 93.55 mohm
        List<String> texts = texts(released, "As found – as left");
        assertTrue(texts.contains("93.1 mΩ @ 17.5 °C"), texts.toString());
        assertTrue(texts.contains("94.02 mΩ"), texts.toString());
        assertTrue(texts.contains("93.55 mΩ"), texts.toString());
        assertTrue(texts.stream().anyMatch(t -> t.contains("brought to 20 °C")), texts.toString());
    }

    @ParameterizedTest
    @EnumSource(value = Outcome.class, names = {"MEETS", "DOUBTFUL", "FAILS"})
    void aBarSaysByShapeWhatTheWordBesideItSays(Outcome outcome) throws Exception {
        XSSFSheet sheet = released.workbook().getSheet("Verdicts");
        String word = outcome.name().toLowerCase(java.util.Locale.ROOT);
        int seen = 0;
        for (XSSFShape shape : sheet.getDrawingPatriarch().getShapes()) {
            XSSFShapeGroup group = (XSSFShapeGroup) shape;
            Cell said = sheet.getRow(((XSSFClientAnchor) group.getAnchor()).getRow1()).getCell(11);
            if (!word.equals(said.getStringCellValue())) {
                continue;
            }
            seen++;
            List<XSSFSimpleShape> dots = new ArrayList<>();
            long slanted = 0;
            for (XSSFShape part : group) {
                if (part instanceof XSSFSimpleShape dot) {
                    dots.add(dot);
                } else if (part instanceof XSSFConnector line) {
                    var size = line.getCTConnector().getSpPr().getXfrm().getExt();
                    slanted += size.getCx() > 0 && size.getCy() > 0 ? 1 : 0;
                }
            }
            assertEquals(1, dots.size());
            int fill = dots.get(0).getCTShape().getSpPr().getSolidFill().getSrgbClr().getVal()[0] & 0xFF;
            assertEquals(outcome == Outcome.MEETS ? 0 : 255, fill);
            assertEquals(outcome == Outcome.FAILS ? 2 : 0, slanted);
            assertTrue(group.getCTGroupShape().getNvGrpSpPr().getCNvPr().getDescr().contains(word));
        }
        long drawn = SampleVerdicts.all().stream().filter(v -> v.outcome() == outcome && v.value() != null).count();
        assertEquals(drawn, seen);
    }

    @Test
    void everyVerdictStandsWithItsLimitSourceAndReason() throws Exception {
        List<String> texts = texts(released, "Verdicts");
        String all = String.join("\n", texts);
        for (Verdict v : SampleVerdicts.all()) {
            assertTrue(texts.contains(v.title()), v.title());
            assertTrue(texts.contains(v.limitText()), v.limitText());
            assertTrue(all.contains(v.reason()), v.reason());
            assertTrue(all.contains(v.source()), v.source());
        }
        assertTrue(texts.indexOf("fails") < texts.indexOf("meets"), "what fails comes first");
    }

    @Test
    void theVerdictsOfTheChecksFitTheRecord() throws Exception {
        Job job = SampleRecord.job();
        Shop shop = SampleShop.shop();
        List<Verdict> verdicts = JobChecks.verdicts(job, shop);
        Path file = folder.resolve("record.xlsx");
        new JobRecordWorkbook().write(job, verdicts, HoldPoints.states(job, verdicts, shop), shop, file);
        try (ReadBack book = new ReadBack(file)) {
            List<String> texts = texts(book, "Verdicts");
            verdicts.forEach(v -> assertTrue(texts.stream().anyMatch(t -> t.startsWith(v.title())), v.title()));
        }
    }

    @Test
    void theCoverSaysWhetherTheMachineIsReleased() throws Exception {
        List<String> cover = texts(released, "Cover");
        assertTrue(cover.contains("RELEASED by Per Lindqvist (quality checker) on 2026-04-03 17:00"), cover.toString());
        assertTrue(cover.stream().anyMatch(t -> t.startsWith("DEMO")));
        try (ReadBack book = written(SampleRecord.job(), SampleVerdicts.all(), false, SampleShop.shop())) {
            List<String> open = texts(book, "Cover");
            assertTrue(open.stream().anyMatch(t -> t.startsWith("NOT RELEASED")), open.toString());
            assertTrue(open.stream().anyMatch(t -> t.contains("Overspeed: not measured")), open.toString());
        }
    }

    @Test
    void aCancelledJobIsMarkedVoidWithItsReason() throws Exception {
        Job job = SampleRecord.job().with(PartKey.of(PartKind.STANDING), new Standing(1, null, new Standing.Closure(
                Standing.How.CANCELLED, "booked twice", null, Instant.parse("2026-03-04T10:00:00Z"), "ida", Map.of()), Map.of()));
        try (ReadBack book = written(job, List.of(), false, SampleShop.shop("EUR", false))) {
            List<String> cover = texts(book, "Cover");
            assertTrue(cover.contains("VOID, cancelled: booked twice (Ida Brandt, 2026-03-04 11:00)"), cover.toString());
            assertTrue(book.texts().stream().noneMatch(t -> t.contains("DEMO")));
        }
    }

    @Test
    void timesAreLocalAndTheirZoneIsStated() throws Exception {
        // 2026-03-02 08:15 UTC is 09:15 in Berlin (CET, UTC+1); 2026-04-03 15:00 UTC is 17:00 there (CEST, UTC+2)
        assertTrue(texts(released, "Booking and plate").contains("2026-03-02 09:15, Ida Brandt"));
        assertTrue(texts(released, "Sign-offs").contains("2026-04-03 17:00"));
        assertTrue(released.workbook().getSheetAt(3).getFooter().getLeft().contains("Europe/Berlin"));
    }

    @Test
    void anEmptyJobStillHasARecord() throws Exception {
        try (ReadBack book = written(new Job("x", "", Map.of()), List.of(), false, SampleShop.shop())) {
            assertEquals("Cover", book.workbook().getSheetAt(0).getSheetName());
            assertTrue(book.texts().contains("Nothing has been judged yet."));
        }
    }

    @Test
    void partsOfWhichNothingIsKnownYetStillHaveARecord() throws Exception {
        Job job = new JobFile(new PartJson()).read(new ByteArrayInputStream("""
                {"copperbookJob":1,"number":"1","parts":{"booking":{"schema":1},"standing":{"schema":1},"nameplate":{"schema":1},
                "inspection":{"schema":1,"readings":[{"id":"a"},{"place":{"kind":"WHOLE"}}],"checklist":[{}],"findings":[{}],
                "excitationRuns":[{}]},"winding/main-stator":{"schema":1,"role":"main-stator","asWound":false,
                "groups":[{"number":1,"coils":[{}],"resistance":{}}],"counts":[{"ordinal":1}],"readings":[{}]},
                "core":{"schema":1,"runs":[{}]},"impregnation":{"schema":1,"treatments":[{}],"drying":[{}]},
                "rectifier":{"schema":1,"positions":[{}],"fitted":{},"suppressor":{"asFound":{}}},
                "run-up":{"schema":1,"readings":[{}],"surges":[{}],"withstands":[{}],"points":[{}],"regulation":{},"overspeed":{},
                "vibration":[{}],"bearingTemperatures":[{}]},"sign-offs":{"schema":1,"signatures":[{}],"concessions":[{}],
                "judgements":[{"acceptable":true}],"reopenings":[{}],"cautions":[{}]}}}""".getBytes(StandardCharsets.UTF_8)));
        Shop nameless = new Shop(new Workshop(1, null, null, null, null, null, null, null, null, null, null, Map.of()),
                SampleShop.shop().instruments(), SampleShop.shop().stock(), SampleShop.shop().limits(), Map.of());
        try (ReadBack book = written(job, List.of(), false, nameless)) {
            assertTrue(book.texts().stream().noneMatch(t -> t.contains("null")), book.texts().toString());
        }
    }

    @Test
    void textThatLooksLikeAFormulaStaysText() throws Exception {
        Cell cell = released.cells().stream().filter(c -> c.getCellType() == CellType.STRING
                && c.getStringCellValue().startsWith("=bridge moved")).findFirst().orElseThrow();
        assertTrue(cell.getCellStyle().getQuotePrefixed());
        assertTrue(released.cells().stream().noneMatch(c -> c.getCellType() == CellType.FORMULA));
    }

    @Test
    void anInstrumentUsedAfterItsCalibrationRanOutIsMarked() throws Exception {
        Shop shop = SampleShop.shop();
        List<Instrument> late = shop.instruments().instruments().stream().map(i -> new Instrument(i.id(), i.name(), i.kind(),
                i.ranges(), i.fourWire(), i.leadOhm(), i.leadOhmU(), i.calibrated(),
                i.id().equals("B1") ? LocalDate.of(2026, 3, 1) : i.calibrationDue(), i.certificate(), i.more())).toList();
        Shop other = new Shop(shop.workshop(), new Instruments(1, late, Map.of()), shop.stock(), shop.limits(), shop.people());
        try (ReadBack book = written(SampleRecord.job(), List.of(), true, other)) {
            assertEquals(1, texts(book, "Instruments").stream().filter(t -> t.contains("USED AFTER")).count());
        }
        assertEquals(0, texts(released, "Instruments").stream().filter(t -> t.contains("USED AFTER")).count());
    }

    @Test
    void everySheetPrintsOnA4OneColumnOfPagesWide() throws Exception {
        Set<String> widths = new HashSet<>();
        for (int i = 0; i < released.workbook().getNumberOfSheets(); i++) {
            XSSFSheet sheet = released.workbook().getSheetAt(i);
            assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize());
            assertTrue(sheet.getFitToPage());
            assertEquals(1, sheet.getPrintSetup().getFitWidth());
            assertEquals("Page &P of &N", sheet.getFooter().getRight());
            assertEquals("Job record 2026-0042", sheet.getHeader().getRight());
            CellRangeAddress repeated = sheet.getRepeatingRows();
            assertNotNull(repeated, sheet.getSheetName() + " repeats its heading");
            String heading = sheet.getRow(repeated.getFirstRow()).getCell(0).getStringCellValue();
            assertTrue(!heading.isBlank(), sheet.getSheetName() + " has a heading to repeat");
            sheet.forEach(r -> assertTrue(r.getLastCellNum() <= 12, sheet.getSheetName() + " row " + r.getRowNum()));
            widths.add(sheet.getSheetName());
        }
        assertEquals(18, widths.size());
    }

    @Test
    void aLockedTargetIsNamedAndKept() throws Exception {
        Path file = folder.resolve("record.xlsx");
        Files.writeString(file, "old");
        Files.writeString(folder.resolve(".~lock.record.xlsx#"), "somebody");
        WorkbookNotWrittenException e = assertThrows(WorkbookNotWrittenException.class, () -> new JobRecordWorkbook().write(
                SampleRecord.job(), List.of(), List.of(), SampleShop.shop(), file));
        assertEquals(Reason.TARGET_LOCKED, e.reason());
        assertEquals("old", Files.readString(file));
        assertFalse(e.getMessage().contains("Exception"));
    }
}

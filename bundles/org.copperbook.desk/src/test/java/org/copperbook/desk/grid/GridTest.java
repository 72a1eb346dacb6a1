package org.copperbook.desk.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.entry.ChoiceEntry;
import org.copperbook.desk.entry.IntegerEntry;
import org.copperbook.desk.entry.TextEntry;
import org.copperbook.desk.form.Note;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GridTest {

    private static final PartKey INSPECTION = PartKey.of(PartKind.INSPECTION);
    private final PartJson json = new PartJson();
    private final JobDocument document = new JobDocument(new Job("id", "1", Map.of()), Map.of(), json);
    private final GridModel grid = new GridModel(document, INSPECTION, "/checklist", List.of(
            new GridColumn("/area", "Area", new TextEntry(), 10, null),
            new GridColumn("/point", "Point", new TextEntry(), 10, null),
            new GridColumn("/condition", "Condition", ChoiceEntry.of(ChecklistItem.Condition.class,
                    e -> e.name().toLowerCase(java.util.Locale.ROOT), Enum::name), 10, null),
            new GridColumn("#both", "Both", null, 10, row -> row.path("area").asText() + "/" + row.path("point").asText())));

    GridTest() {
        grid.newRow(() -> json.mapper().createObjectNode().put("note", "begun in the grid"));
    }

    @Test
    void typingIntoTheEmptyRowMakesItARow() {
        assertEquals(1, grid.rows());
        grid.type(0, 1, "shaft");
        assertEquals(2, grid.rows());
        assertEquals("shaft", inspection().checklist().get(0).point());
        assertEquals("begun in the grid", inspection().checklist().get(0).note());
        document.undo(INSPECTION);
        assertEquals(1, grid.rows());
        assertTrue(document.part(INSPECTION).isEmpty());
    }

    @Test
    void whatIsWorkedOutIsPassedOverOnTheWayFromCellToCell() {
        assertEquals(1, grid.typedBeside(0, 1));
        assertEquals(-1, grid.typedBeside(2, 1), "behind the last typed column only a computed one stands");
        assertEquals(2, grid.typedBeside(3, -1));
        assertEquals(-1, grid.typedBeside(0, -1));
    }

    @Test
    void aGridThatIsClosedOffersNoEmptyRow() {
        grid.type(0, 0, "visual");
        assertEquals(2, grid.rows());
        grid.open(false);
        assertEquals(1, grid.rows());
        grid.open(true);
        assertEquals(2, grid.rows());
    }

    @Test
    void aPlaceWhoseRowIsGoneIsNearTheRowsLeft() {
        grid.paste(0, 0, PastedBlock.parse("a\nb\nc"));
        assertEquals(1, grid.nearestRowOf("/checklist/1/area"));
        assertEquals(3, grid.nearestRowOf("/checklist/7/area"), "the empty row, where it was typed");
        grid.open(false);
        assertEquals(2, grid.nearestRowOf("/checklist/7"));
        assertEquals(-1, grid.nearestRowOf("/findings/0"));
    }

    @Test
    void aPastedBlockIsOneStepAndAddsTheRowsItNeeds() {
        grid.type(0, 0, "mechanical");
        int misfits = grid.paste(0, 0, PastedBlock.parse("visual\tshaft\tgood\nvisual\tfan\tcracked\nvisual\tfits\tworn\n"));
        assertEquals(1, misfits);
        assertEquals(3, inspection().checklist().size());
        assertEquals(ChecklistItem.Condition.GOOD, inspection().checklist().get(0).condition());
        assertEquals("cracked", grid.text(1, 2));
        assertInstanceOf(Note.Problem.class, grid.note(1, 2));
        document.undo(INSPECTION);
        assertEquals(1, inspection().checklist().size());
        assertEquals("mechanical", grid.text(0, 0));
    }

    @Test
    void aPasteNeverRunsOverTheEdgeOrIntoComputedColumns() {
        grid.paste(0, 2, PastedBlock.parse("good\tinto computed\tbeyond"));
        assertEquals(ChecklistItem.Condition.GOOD, inspection().checklist().get(0).condition());
        assertEquals("/", grid.text(0, 3));
        GridModel fixed = new GridModel(document, INSPECTION, "/checklist", grid.columns());
        fixed.paste(0, 0, PastedBlock.parse("a\nb\nc"));
        assertEquals(1, inspection().checklist().size(), "a grid that does not grow takes what has room");
    }

    @Test
    void copyingAndPastingGivesTheSameRows() {
        grid.paste(0, 0, PastedBlock.parse("a\tb \"c\"\tgood\n\"d\te\"\tf\tworn"));
        CopiedBlock copied = grid.copy(0, 1, 0, 2);
        Inspection before = inspection();
        grid.clear(0, 1, 0, 2);
        assertEquals("", grid.text(0, 0));
        grid.paste(0, 0, PastedBlock.parse(copied.text()));
        assertEquals(before, inspection());
        assertEquals("<table><tr><td>a</td><td>b \"c\"</td><td>good</td></tr><tr><td>d\te</td><td>f</td><td>worn</td></tr></table>",
                copied.html());
        assertEquals("a,\"b \"\"c\"\"\",good\r\nd\te,f,worn", copied.csv());
    }

    @Test
    void allThatIsShownIsCopiedWithItsHeadingsAndWithoutTheEmptyRowAtTheEnd() {
        grid.paste(0, 0, PastedBlock.parse("a\tb\tgood\nc\td\tworn"));
        grid.where(row -> row.path("area").asText().equals("c"));
        List<List<String>> rows = grid.copyAll().rows();
        assertEquals(2, rows.size());
        assertEquals(grid.columns().stream().map(GridColumn::title).toList(), rows.get(0));
        assertEquals(List.of("c", "d", "worn"), rows.get(1).subList(0, 3));
    }

    @Test
    void fillDownCopiesTheFirstRowOfTheBlock() {
        grid.paste(0, 0, PastedBlock.parse("mechanical\tshaft\tgood\nx\tfan\t\ny\tfits\t"));
        grid.fillDown(0, 2, 0, 0);
        assertEquals(List.of("mechanical", "mechanical", "mechanical"),
                inspection().checklist().stream().map(ChecklistItem::area).toList());
        document.undo(INSPECTION);
        assertEquals("x", grid.text(1, 0));
    }

    @Test
    void aFilteredGridShowsAndChangesItsOwnRowsOnly() {
        grid.paste(0, 0, PastedBlock.parse("visual\ta\t\nmechanical\tb\t\nvisual\tc\t"));
        GridModel visual = new GridModel(document, INSPECTION, "/checklist", grid.columns());
        visual.where(r -> r.path("area").asText().equals("visual"));
        visual.newRow(() -> json.mapper().createObjectNode().put("area", "visual"));
        assertEquals(3, visual.rows());
        assertEquals("/checklist/2/point", visual.pointer(1, 1));
        visual.type(2, 1, "d");
        assertEquals("visual", inspection().checklist().get(3).area());
        visual.removeRow(1);
        assertEquals(List.of("a", "b", "d"), inspection().checklist().stream().map(ChecklistItem::point).toList());
        assertEquals(0, visual.rowOf("/checklist/0/condition"));
        assertEquals(2, visual.columnOf("/checklist/0/condition"));
        assertEquals(-1, visual.rowOf("/checklist/1"));
    }

    @Test
    void aCellTheRecordRefusesKeepsItsTextAndSaysWhy() {
        PartKey key = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
        document.beginWith(key, json.mapper().createObjectNode().put("schema", 1).put("role", "main-stator")
                .put("asWound", false));
        GridModel wires = new GridModel(document, key, "/wire", List.of(
                new GridColumn("/size", "Size", new TextEntry(), 10, null),
                new GridColumn("/strands", "Strands", new IntegerEntry(-9, 99), 10, null)));
        wires.newRow(() -> json.mapper().createObjectNode().put("strands", 1));
        wires.type(0, 0, "1.25 mm");
        wires.type(0, 1, "0");
        assertEquals("0", wires.text(0, 1));
        assertTrue(assertInstanceOf(Note.Problem.class, wires.note(0, 1)).text().contains("strands"));
        assertEquals(1, ((WindingData) document.part(key).orElseThrow()).wire().get(0).strands());
        wires.type(0, 1, "2");
        assertEquals(2, ((WindingData) document.part(key).orElseThrow()).wire().get(0).strands());
        assertFalse(document.draft(key).asTyped().containsKey("/wire/0/strands"));
    }

    static List<List<Object>> clipboards() {
        return List.of(
                List.of("a\tb\nc\td", List.of(List.of("a", "b"), List.of("c", "d"))),
                List.of("a\tb\r\nc\td\r\n", List.of(List.of("a", "b"), List.of("c", "d"))),
                List.of("\"a\nb\"\tc", List.of(List.of("a\nb", "c"))),
                List.of("\"say \"\"hi\"\"\"\tx", List.of(List.of("say \"hi\"", "x"))),
                List.of("1/4\"\tx", List.of(List.of("1/4\"", "x"))),
                List.of("\"half open\tx", List.of(List.of("\"half open", "x"))),
                List.of("a\t\t", List.of(List.of("a", "", ""))),
                List.of("", List.of()),
                List.of("\n", List.of(List.of(""))));
    }

    @ParameterizedTest
    @MethodSource("clipboards")
    void clipboardTextIsReadAsASpreadsheetWritesIt(List<Object> row) {
        assertEquals(row.get(1), PastedBlock.parse((String) row.get(0)).rows());
    }

    private Inspection inspection() {
        return document.part(INSPECTION, Inspection.class).orElseThrow();
    }
}

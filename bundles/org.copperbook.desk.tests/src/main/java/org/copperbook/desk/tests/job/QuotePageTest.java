package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page of a quote. Amounts are decimal arithmetic by hand, written out beside each. */
class QuotePageTest {

    private static final PartKey QUOTE = PartKey.quote(1);
    private static final String LIST = "/alternatives";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private JobEditor editor;

    @BeforeEach
    void aQuoteIsBegun() throws Exception {
        desktop.beSomebody();
        editor = desktop.open("2026-0008");
        editor.begin(QUOTE);
        desktop.settle(editor);
        editor.show(QUOTE);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void cell(RecordGrid grid, int row, String column, String words) {
        keys.cell(grid, row, column(grid, column), words);
    }

    private static int column(RecordGrid grid, String pointer) {
        return grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(pointer);
    }

    private static String shown(RecordGrid grid, int row, String column) {
        return grid.model().text(row, column(grid, column)).replace("\u00a0", " ");
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        for (JsonNode a : editor.document().rows(QUOTE, LIST)) {
            names.add(a.path("name").asText());
        }
        return names;
    }

    private void line(int alternative, int row, String kind, String text, String quantity, String unit, String price) {
        RecordGrid lines = desktop.grid(LIST + "/" + alternative + "/lines");
        cell(lines, row, "/kind", kind);
        cell(lines, row, "/text", text);
        cell(lines, row, "/quantity", quantity);
        cell(lines, row, "/unit", unit);
        cell(lines, row, "/unitPrice", price);
    }

    @Test
    void alternativesAreAddedNamedCopiedMovedTakenOutAndTakenBack() {
        RecordGrid beside = desktop.grid(LIST, "net");
        assertEquals(1, beside.model().filled());
        cell(beside, 1, "/name", "clean and dry");
        desktop.until("the new alternative has its own lines", () -> desktop.shows(LIST + "/1/lines"));
        line(1, 0, "labour", "wash and dry", "6", "h", "50");
        beside.moveTo(1, 0);
        desktop.press("quote.copyAlternative");
        assertEquals(List.of("full rewind", "clean and dry", "clean and dry, copy"), names());
        assertEquals("wash and dry", editor.document().value(QUOTE, LIST + "/2/lines/0/text").asText());
        desktop.press("quote.moveUp");
        desktop.press("quote.moveUp");
        assertEquals(List.of("clean and dry, copy", "full rewind", "clean and dry"), names());
        desktop.press("quote.moveUp");
        assertEquals("It is the first already.", ((Label) desktop.field("alternatives/said")).getText());
        desktop.type(LIST + "/0/name", "part repair");
        assertEquals("part repair", shown(beside, 0, "/name"));
        editor.document().removeRow(QUOTE, LIST, 0);
        desktop.work();
        assertFalse(desktop.shows(LIST + "/2/lines"), "what is gone is off the page");
        editor.document().undo(QUOTE);
        desktop.work();
        assertTrue(desktop.shows(LIST + "/2/lines"));
        assertEquals(List.of("part repair", "full rewind", "clean and dry"), names());
    }

    @Test
    void linesAreProposedFromTheRecordOnceAndWhatIsMissingIsSaid() throws Exception {
        editor = desktop.open("2026-0005");
        editor.begin(QUOTE);
        desktop.settle(editor);
        editor.show(QUOTE);
        desktop.settle(editor);
        int before = editor.document().rows(QUOTE, LIST + "/0/lines").size();
        desktop.press("quote.propose");
        JsonNode lines = editor.document().rows(QUOTE, LIST + "/0/lines").deepCopy();
        assertTrue(lines.size() > before, lines.toString());
        String said = ((Label) desktop.field("quote.tookFindings")).getText();
        assertTrue(said.contains("added"), said);
        desktop.press("quote.propose");
        assertEquals(lines, editor.document().rows(QUOTE, LIST + "/0/lines"), "a second press adds nothing");
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals(before, editor.document().rows(QUOTE, LIST + "/0/lines").size(), "one undo takes all of it back");
    }

    @Test
    void theAlternativesStandSideBySideAndTheWorkshopsFiguresApart() {
        // 10 h x 50 + 4 kg x 25 = 600; margin 20 % = 750.00; with 20 % tax 900.00; earned 150 = 25 % of 600
        RecordGrid taxes = desktop.grid("/taxes");
        cell(taxes, 0, "/code", "T");
        cell(taxes, 0, "/ratePercent", "20");
        line(0, 0, "labour", "wind", "10", "h", "50");
        line(0, 1, "material", "varnish", "4", "kg", "25");
        cell(desktop.grid(LIST + "/0/lines"), 0, "/tax", "T");
        cell(desktop.grid(LIST + "/0/lines"), 1, "/tax", "T");
        desktop.type(LIST + "/0/markUpPercent", "30");
        assertEquals("30 % mark-up on cost, 23.08 % margin on the price",
                desktop.text("quote.markUpAndMargin.0").replace(',', '.').replace("cost.", "cost,"), "30/1.3 = 23.08");
        desktop.type(LIST + "/0/marginPercent", "20");
        assertEquals("", desktop.text(LIST + "/0/markUpPercent"), "the margin has taken the mark-up's place");
        assertEquals("25 % mark-up on cost, 20 % margin on the price", desktop.text("quote.markUpAndMargin.0"));
        RecordGrid beside = desktop.grid(LIST, "net");
        assertEquals("750.00", shown(beside, 0, "net"));
        assertEquals("150.00", shown(beside, 0, "tax"));
        assertEquals("900.00", shown(beside, 0, "gross"));
        RecordGrid inside = desktop.grid(LIST, "earned");
        assertEquals("10", shown(inside, 0, "hours"));
        assertEquals("", shown(inside, 0, "copper"), "varnish in kilograms is no copper");
        assertEquals("600.00", shown(inside, 0, "cost"));
        assertEquals("150.00", shown(inside, 0, "earned"));
        assertEquals("25", shown(inside, 0, "markUpReached"));
        assertEquals("20", shown(inside, 0, "marginReached"));
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals("30", desktop.text(LIST + "/0/markUpPercent"), "one undo puts the mark-up back");
    }
}

package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.CsvTransfer;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The group grid with 200 groups of 15 columns, by real keys: move, type, fill down, paste, copy, mistakes beside the cell. */
class TwoHundredGroupsTest {

    private static final String GROUPS = "/groups";

    private final Desktop desktop = new Desktop();
    private final CountedKeys keys = new CountedKeys(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void blocksComeAndGoAndMistakesStandBesideTheirCell() throws Exception {
        JobEditor editor = LargeWinding.open(desktop);
        RecordGrid grid = desktop.grid(GROUPS);
        assertEquals(200, grid.model().filled());
        assertTrue(grid.table().getColumnCount() >= 15, grid.table().getColumnCount() + " columns");
        int shells = Display.getCurrent().getShells().length;
        at(grid, 0, "/resistance");
        keys.type("0,0462");
        keys.press(SWT.CR);
        keys.type("46.3 m");
        keys.press(SWT.CR);
        assertEquals(0.0462, winding(editor).groups().get(0).resistance().observed().value());
        assertEquals(0.0463, winding(editor).groups().get(1).resistance().observed().value());
        assertEquals(2, grid.row(), "Enter moves on down");
        keys.press(SWT.ARROW_RIGHT);
        keys.press(SWT.ARROW_LEFT);
        keys.press(SWT.PAGE_DOWN);
        assertTrue(grid.row() > 2, "Page down moves on");
        mistakes(editor, grid);
        fillDown(editor, grid);
        pasteColumn(editor, grid);
        copy(grid);
        assertEquals(shells, Display.getCurrent().getShells().length, "no dialog has come up");
    }

    private void mistakes(JobEditor editor, RecordGrid grid) {
        at(grid, 4, "/coils");
        keys.type("13to20");
        keys.press(SWT.CR);
        assertEquals("13to20", grid.model().text(4, column(grid, "/coils")), "what was typed stays");
        grid.moveTo(4, column(grid, "/coils"));
        assertTrue(grid.spoken().contains("13to20") && grid.spoken().contains("1-11"), grid.spoken());
        keys.control('z');
        desktop.until("Ctrl+Z takes the mistake back",
                () -> editor.document().typed(LargeWinding.STATOR, "/groups/4/coils").isEmpty());
        desktop.settle(editor);
    }

    private void fillDown(JobEditor editor, RecordGrid grid) {
        at(grid, 0, "/circuit");
        for (int i = 0; i < 9; i++) {
            shiftDown();
        }
        keys.control('d');
        desktop.until("the first of the marked cells fills the others", () -> winding(editor).groups().stream().limit(10)
                .map(CoilGroup::circuit).distinct().count() == 1);
    }

    private void pasteColumn(JobEditor editor, RecordGrid grid) {
        assertTrue(winding(editor).groups().get(199).resistance().observed().value() < 0.04615, "as it was read");
        String block = IntStream.rangeClosed(1, 200).mapToObj(g -> (460 + g % 9) / 10.0 + " m\t" + (20 + g % 4))
                .collect(Collectors.joining("\n"));
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        clipboard.setContents(new Object[] {block}, new Transfer[] {TextTransfer.getInstance()});
        at(grid, 0, "/resistance");
        keys.control('v');
        desktop.until("the block of a spreadsheet stands in the record",
                () -> Math.abs(winding(editor).groups().get(199).resistance().observed().value() - 0.0462) < 1e-9);
        clipboard.dispose();
        keys.control('z');
        desktop.until("one step takes the whole block back",
                () -> winding(editor).groups().get(0).resistance().observed().value() == 0.0462);
        keys.control('y');
        desktop.settle(editor);
    }

    private void copy(RecordGrid grid) {
        grid.moveTo(0, 0);
        shiftDown();
        keys.control('c');
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            assertEquals("1\n2", clipboard.getContents(TextTransfer.getInstance()));
            assertTrue(String.valueOf(clipboard.getContents(HTMLTransfer.getInstance())).contains("<td>2</td>"));
            assertEquals("1\r\n2", clipboard.getContents(CsvTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    private void shiftDown() {
        keys.hold(SWT.SHIFT, SWT.ARROW_DOWN);
    }

    private void at(RecordGrid grid, int row, String pointer) {
        desktop.until("the grid has the cursor", () -> grid.table().isFocusControl() || grid.table().forceFocus());
        grid.moveTo(row, column(grid, pointer));
        desktop.work();
    }

    private static int column(RecordGrid grid, String pointer) {
        List<String> all = grid.model().columns().stream().map(c -> c.pointer()).toList();
        assertTrue(all.contains(pointer), pointer + " among " + all);
        return all.indexOf(pointer);
    }

    private static WindingData winding(JobEditor editor) {
        return (WindingData) editor.document().part(LargeWinding.STATOR).orElseThrow();
    }
}

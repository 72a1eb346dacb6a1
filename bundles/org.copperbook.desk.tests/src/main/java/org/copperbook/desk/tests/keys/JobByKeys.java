package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/** A job as somebody works on it with the keyboard alone: pages, fields, grids, cautions, signatures. */
public final class JobByKeys {

    private final Desktop desktop;
    private final Walker walker;
    private JobEditor editor;

    public JobByKeys(Desktop desktop) {
        this.desktop = desktop;
        this.walker = new Walker(desktop);
    }

    /** The job's editor. */
    public JobEditor editor() {
        return editor;
    }

    Walker walker() {
        return walker;
    }

    /** Books a machine in with Ctrl+N; the cursor stands in the first field. */
    public JobByKeys bookIn() {
        walker.control('n');
        return opened();
    }

    /** Waits until the job that is opening can be typed into. */
    JobByKeys opened() {
        desktop.until("a job is open", () -> desktop.activeEditor() instanceof JobEditor);
        editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        desktop.until("the cursor stands on the page, not at " + walker.at(), () -> walker.here() != null
                && walker.here() != walker.here().getShell() && onPage(walker.here()));
        return this;
    }

    /** Turns the pages with Ctrl+PageDown until one is shown. */
    public JobByKeys page(PartKey key) {
        int pages = (int) editor.outline().stream().filter(OutlineRow.Page.class::isInstance).count();
        for (int i = 0; i <= pages && !showing(key); i++) {
            PartKey before = editor.shown().orElseThrow();
            walker.press(SWT.CTRL, SWT.PAGE_DOWN, () -> !showing(before));
        }
        assertEquals(key, editor.shown().orElseThrow(), "the page is among those that are turned");
        desktop.settle(editor);
        return this;
    }

    /** Begins a part by its entry under "Add" in the outline. */
    public JobByKeys add(String addRow, String entry, PartKey key) {
        walker.backTo("outline");
        Table outline = (Table) walker.here();
        List<String> labels = editor.outline().stream().map(OutlineRow::label).toList();
        int wanted = labels.indexOf(addRow);
        assertTrue(wanted >= 0, addRow + " stands in the outline: " + labels);
        while (outline.getSelectionIndex() != wanted) {
            int before = outline.getSelectionIndex();
            walker.press(before < wanted ? SWT.ARROW_DOWN : SWT.ARROW_UP);
            desktop.until("the outline goes on from " + before, () -> outline.getSelectionIndex() != before);
            desktop.settle(editor);
            wanted = editor.outline().stream().map(OutlineRow::label).toList().indexOf(addRow);
        }
        if (entry == null) {
            walker.press(SWT.CR);
            desktop.until(key + " is begun", () -> showing(key));
        } else {
            walker.menu(() -> walker.press(SWT.CR), entry, () -> showing(key));
        }
        desktop.settle(editor);
        return this;
    }

    /** Fills a field and leaves it with Enter. */
    public JobByKeys field(String pointer, String words) {
        walker.go(desktop.field(pointer)).types(words);
        return this;
    }

    /** Fills an empty field of several lines. */
    public JobByKeys lines(String pointer, String words) {
        walker.go(desktop.field(pointer)).writes(words);
        return this;
    }

    /** Ticks a box with the space bar. */
    public JobByKeys tick(String id) {
        var box = (org.eclipse.swt.widgets.Button) desktop.field(id);
        walker.go(box).presses(id + " is ticked", box::getSelection);
        return this;
    }

    /** Presses a button with the space bar. */
    public JobByKeys press(String id, java.util.function.BooleanSupplier done) {
        walker.go(desktop.field(id)).presses(id + " has done its work", done);
        desktop.settle(editor);
        return this;
    }

    /** Chooses from a list with the arrow keys. */
    public JobByKeys choose(String id, String item) {
        walker.go(desktop.field(id)).chooses(item);
        return this;
    }

    /** Chooses from a list the item that holds some words. */
    public JobByKeys chooseWith(String id, String words) {
        var list = (org.eclipse.swt.widgets.Combo) desktop.field(id);
        walker.go(list);
        return choose(id, List.of(list.getItems()).stream().filter(i -> i.contains(words)).findFirst()
                .orElseThrow(() -> new AssertionError(words + " is offered: " + List.of(list.getItems()))));
    }

    /** Types the cells of a row, one after the other; an empty text passes its cell. */
    public JobByKeys row(String list, int row, String firstColumn, String... cells) {
        enter(desktop.grid(list, firstColumn), row, firstColumn);
        walker.row(cells);
        return this;
    }

    /** Pastes rows as a spreadsheet puts them on the clipboard; cells stand apart by tabs, and no text may be refused. */
    public JobByKeys paste(String list, int row, String firstColumn, String... rows) {
        return paste(desktop.grid(list, firstColumn), row, firstColumn, rows);
    }

    /** Pastes rows into a grid that shares its list with another one. */
    public JobByKeys paste(RecordGrid grid, int row, String firstColumn, String... rows) {
        enter(grid, row, firstColumn);
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            clipboard.setContents(new Object[] {String.join("\n", rows) + "\n"},
                    new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
        String before = grid.model().text(row, grid.column());
        walker.control('v');
        desktop.until(rows.length + " rows are pasted into " + grid.list(), () -> !grid.model().text(row,
                grid.column()).equals(before) && grid.model().filled() >= row + rows.length);
        for (int r = row; r < row + rows.length; r++) {
            for (int c = 0; c < grid.model().columns().size(); c++) {
                assertEquals(new org.copperbook.desk.form.Note.None(), grid.model().note(r, c),
                        grid.model().pointer(r, c) + " \"" + grid.model().text(r, c) + "\" is understood");
            }
        }
        return this;
    }

    /** Counts the turns of the old winding as whoever works here, from a note on paper, and hands the count in. */
    public JobByKeys count(String turns, String strands) {
        press("count.begin", () -> desktop.shows("count.whole"))
                .field("count.whole", turns)
                .field("count.tapStrands", strands);
        long before = handedIn();
        return press("count.handIn", () -> handedIn() > before);
    }

    private long handedIn() {
        return editor.document().part(editor.shown().orElseThrow(), WindingData.class).stream()
                .flatMap(w -> w.counts().stream()).filter(TurnCount::handedIn).count();
    }

    /** Acknowledges the cautions of a step. */
    public JobByKeys acknowledge(String step) {
        Control button = desktop.field("cautions." + step);
        walker.go(button).presses("the cautions are acknowledged",
                () -> editor.document().job().signOffs().stream().flatMap(s -> s.cautions().stream())
                        .anyMatch(c -> step.equals(c.step()) && session().equals(c.by())));
        desktop.settle(editor);
        return this;
    }

    /** Says who works here: the menu People opens with Alt+P. */
    public JobByKeys somebody(String key) {
        if (!session().equals(key)) {
            String name = desktop.session().shop().people().get(key).name();
            walker.menu(() -> walker.alt('p'), name, () -> session().equals(key));
            desktop.settle(editor);
        }
        return this;
    }

    /** Signs a hold point as whoever works here. */
    public JobByKeys sign(HoldPoint point) {
        assertEquals(List.of(), state(point).blockers(), point + " may be signed");
        long before = signatures();
        walker.go(desktop.field("sign." + point.name())).presses(point + " is signed",
                () -> signatures() > before);
        desktop.settle(editor);
        return this;
    }

    /** Tries to sign a hold point and is refused in words beside the button. */
    public JobByKeys refused(HoldPoint point) {
        var said = (Label) desktop.field("sign.said." + point.name());
        walker.go(desktop.field("sign." + point.name())).presses("the refusal of " + point + " is said",
                () -> said.isDisposed() || !said.getText().isEmpty());
        assertTrue(!said.isDisposed() && state(point).state() != HoldPointState.State.SIGNED, point + " is refused");
        return this;
    }

    /** How a hold point stands. */
    public HoldPointState state(HoldPoint point) {
        return editor.judgement().holdPoints().stream().filter(s -> s.point() == point).findFirst().orElseThrow();
    }

    /** Saves with Ctrl+S. */
    public JobByKeys save() {
        walker.control('s');
        desktop.until("Ctrl+S has saved the job", () -> !editor.isDirty());
        desktop.settle(editor);
        return this;
    }

    /** Takes the last step on the page back with Ctrl+Z and does it again with Ctrl+Y. */
    JobByKeys undoneAndDoneAgain(String pointer, String before, String after) {
        desktop.until(pointer + " shows \"" + after + "\", not \"" + desktop.text(pointer) + "\"",
                () -> desktop.text(pointer).equals(after));
        walker.control('z');
        desktop.until("Ctrl+Z brings \"" + before + "\" back to " + pointer,
                () -> desktop.text(pointer).equals(before));
        walker.control('y');
        desktop.until("Ctrl+Y does it again", () -> desktop.text(pointer).equals(after));
        return this;
    }

    private void enter(RecordGrid grid, int row, String column) {
        walker.go(grid.table());
        walker.cell(row, column);
    }

    private long signatures() {
        return editor.document().job().signOffs().map(s -> s.signatures().size()).orElse(0);
    }

    private String session() {
        return desktop.session().who().orElse("");
    }

    private boolean showing(PartKey key) {
        return editor.shown().filter(key::equals).isPresent();
    }

    private static boolean onPage(Control c) {
        for (Control at = c; at != null; at = at.getParent()) {
            if (at instanceof org.eclipse.swt.custom.ScrolledComposite) {
                return true;
            }
        }
        return false;
    }
}

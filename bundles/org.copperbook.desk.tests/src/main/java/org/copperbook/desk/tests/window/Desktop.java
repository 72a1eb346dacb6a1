package org.copperbook.desk.tests.window;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.photo.PhotosArea;
import org.copperbook.desk.register.RegisterView;
import org.copperbook.desk.shell.DeskSession;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

/**
 * The real window as a test drives it: finds what people see by the place of the field in the record, types, presses,
 * and waits for what comes in the background.
 */
public final class Desktop {

    private static final long PATIENCE_MILLIS = 60_000;

    /** The store and the shop behind the window. */
    public DeskSession session() {
        return DeskSession.ofWorkbench();
    }

    /** The page of the window. */
    public IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Lets the window work until something holds. */
    public void until(String what, BooleanSupplier holds) {
        Display display = Display.getCurrent();
        long end = System.currentTimeMillis() + PATIENCE_MILLIS;
        while (!holds.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                fail("waited in vain until " + what);
            }
            if (!display.readAndDispatch()) {
                display.timerExec(20, () -> { });
                display.sleep();
            }
        }
    }

    /** Lets the window do all it has to do now. */
    public void work() {
        Display display = Display.getCurrent();
        while (display.readAndDispatch()) {
        }
    }

    /** Lets the window work for a while. */
    public void pause(int millis) {
        boolean[] over = new boolean[1];
        Display.getCurrent().timerExec(millis, () -> over[0] = true);
        until("some time is over", () -> over[0]);
    }

    /** The register. */
    public RegisterView register() throws PartInitException {
        return (RegisterView) page().showView(Desk.REGISTER);
    }

    /** Says who works here: the first person of the shop with any role. */
    public String beSomebody() {
        String key = session().shop().people().values().stream().filter(p -> p.active() && !p.roles().isEmpty())
                .findFirst().orElseThrow().key();
        session().who(key);
        work();
        return key;
    }

    /** Opens a job by its number and waits until it can be worked on. */
    public JobEditor open(String number) throws PartInitException {
        String id = session().store().idOf(number).orElseThrow();
        activate();
        JobEditor editor = (JobEditor) page().openEditor(new JobInput(id, number), Desk.EDITOR);
        settle(editor);
        return editor;
    }

    /** Brings the window to the front with the keyboard on it, wherever an earlier test left the keyboard. */
    private void activate() {
        Shell window = page().getWorkbenchWindow().getShell();
        for (Shell other : window.getShells()) {
            // One that stood before another is gone with it.
            if (!other.isDisposed()) {
                other.close();
            }
        }
        window.forceActive();
        until("the window has the keyboard", () -> Display.getCurrent().getActiveShell() == window);
    }

    /** Waits until a job is read and judged. */
    public void settle(JobEditor editor) {
        // Layouts asked for while a page is built are done by the event loop, so it turns at least once.
        work();
        until("the job is read and judged", editor::isSettled);
    }

    /** Closes every editor and throws away what is typed. */
    public void closeAll() {
        page().closeAllEditors(false);
        work();
    }

    /** Carries a command out as its menu or key does. */
    public void command(String id) throws CommandException {
        activate();
        page().getWorkbenchWindow().getService(IHandlerService.class).executeCommand(id, null);
        work();
    }

    /** Whether a command of the tool bar, by the word on it, can be given. */
    public boolean offers(String tool) {
        return items(page().getWorkbenchWindow().getShell()).filter(i -> i.getText().equals(tool)).findFirst().orElseThrow()
                .isEnabled();
    }

    private static Stream<ToolItem> items(Composite in) {
        return in instanceof ToolBar bar ? Stream.of(bar.getItems())
                : Stream.of(in.getChildren()).filter(Composite.class::isInstance).flatMap(c -> items((Composite) c));
    }

    /** The active editor. */
    public IEditorPart activeEditor() {
        return page().getActiveEditor();
    }

    /** The control of a field on the page shown. */
    public Control field(String pointer) {
        return find(c -> pointer.equals(c.getData(Desk.ID)) && c.isVisible())
                .orElseThrow(() -> new AssertionError("no field " + pointer + " in the window; there are " + ids()));
    }

    /** Whether a control of this name is there to be seen. */
    public boolean shows(String id) {
        return find(c -> id.equals(c.getData(Desk.ID)) && c.isVisible()).isPresent();
    }

    /** The grid over a list on the page shown. */
    public RecordGrid grid(String list) {
        return Objects.requireNonNull(RecordGrid.of((Table) field(list)), list);
    }

    /** The grid over a list on the page shown that has a column; two grids of one page can show one list. */
    public RecordGrid grid(String list, String column) {
        return find(c -> c.isVisible() && c instanceof Table t && RecordGrid.of(t) != null
                && RecordGrid.of(t).list().equals(list)
                && RecordGrid.of(t).model().columns().stream().anyMatch(k -> k.pointer().equals(column)))
                .map(c -> RecordGrid.of((Table) c))
                .orElseThrow(() -> new AssertionError("no grid over " + list + " with " + column + " in the window"));
    }

    /** The photos on the page shown; the first of them where there are several. */
    public PhotosArea photos() {
        return Objects.requireNonNull(PhotosArea.of((Table) find(c -> c instanceof Table t && PhotosArea.of(t) != null
                && t.getParent().isVisible()).orElseThrow(() -> new AssertionError("no photos in the window"))));
    }

    /** Text of a field. */
    public String text(String pointer) {
        Control c = field(pointer);
        return c instanceof Combo combo ? combo.getText() : ((Text) c).getText();
    }

    /** Types into a field in place of what stands there, and presses Enter. */
    public void type(String pointer, String text) {
        Control c = field(pointer);
        assertTrue(c.setFocus(), pointer + " takes the cursor");
        work();
        if (c instanceof Combo combo) {
            combo.setText(text);
        } else {
            ((Text) c).setText(text);
        }
        c.traverse(SWT.TRAVERSE_RETURN);
        work();
    }

    /** Types into a cell of a grid as its key press does, and presses Enter. */
    public void type(String list, int row, int column, String text) {
        RecordGrid grid = grid(list);
        grid.table().setFocus();
        grid.moveTo(row, column);
        var key = new org.eclipse.swt.widgets.Event();
        key.character = text.charAt(0);
        key.keyCode = text.charAt(0);
        grid.table().notifyListeners(SWT.KeyDown, key);
        String cell = grid.model().pointer(row, column);
        // A letter that may begin a scanned code waits a moment.
        until("the key opens the cell " + cell, () -> shows(cell) && field(cell) instanceof Text);
        Text editor = (Text) field(cell);
        editor.setText(text);
        editor.traverse(SWT.TRAVERSE_RETURN);
        work();
    }

    /** Presses a button. */
    public void press(String id) {
        Button b = (Button) field(id);
        assertTrue(b.isEnabled(), id + " can be pressed");
        b.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        work();
    }

    /** All words that stand under a grid. */
    public String saidUnder(RecordGrid grid) {
        StringBuilder said = new StringBuilder();
        find(grid.control(), c -> {
            if (c instanceof Label l) {
                said.append(l.getText()).append('\n');
            }
            return false;
        });
        return said.toString();
    }

    private static Optional<Control> find(Predicate<Control> wanted) {
        for (Control shell : Display.getCurrent().getShells()) {
            Optional<Control> found = find(shell, wanted);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<Control> find(Control at, Predicate<Control> wanted) {
        if (wanted.test(at)) {
            return Optional.of(at);
        }
        if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                Optional<Control> found = find(child, wanted);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static List<String> ids() {
        List<String> all = new ArrayList<>();
        find(c -> {
            if (c.getData(Desk.ID) != null && c.isVisible()) {
                all.add(c.getData(Desk.ID).toString());
            }
            return false;
        });
        return all;
    }

    /** The text on the clipboard; the word null when there is none. */
    public String copied() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return String.valueOf(clipboard.getContents(TextTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }
}

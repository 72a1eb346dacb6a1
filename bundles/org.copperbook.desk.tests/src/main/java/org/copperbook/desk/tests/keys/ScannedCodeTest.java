package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.JobCode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The code of a tag, sent by a reader as key presses of the window system, and people who type beside it. */
class ScannedCodeTest {

    private static final String HERE = "2026-0004";
    private static final String OTHER = "2026-0001";
    private static final int READER = 0;
    private static final int PERSON = 70;

    private final Desktop desktop = new Desktop();
    private final Display display = Display.getCurrent();
    private JobEditor editor;

    @BeforeEach
    void aJobIsOpen() throws Exception {
        desktop.beSomebody();
        editor = desktop.open(HERE);
        editor.show(PartKey.of(PartKind.BOOKING));
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    /** Presses keys; of a person's the window sees each before the next, as keys posted carry no time of their own. */
    private void keys(String text, int millis) {
        for (char c : text.toCharArray()) {
            boolean shift = Character.isUpperCase(c);
            if (shift) {
                post(SWT.KeyDown, SWT.SHIFT, '\0');
            }
            post(SWT.KeyDown, c == '\r' ? SWT.CR : 0, c);
            post(SWT.KeyUp, c == '\r' ? SWT.CR : 0, c);
            if (shift) {
                post(SWT.KeyUp, SWT.SHIFT, '\0');
            }
            if (millis > READER) {
                desktop.pause(millis);
            }
        }
    }

    private void post(int type, int keyCode, char character) {
        Event e = new Event();
        e.type = type;
        e.keyCode = keyCode;
        e.character = Character.toLowerCase(character);
        assertTrue(display.post(e), "the window system takes the key");
    }

    private void scan(String number) {
        keys(JobCode.of(number) + "\r", READER);
    }

    private Text cursorIn(String pointer) {
        Text field = (Text) desktop.field(pointer);
        field.setFocus();
        desktop.until("the cursor stands in " + pointer, field::isFocusControl);
        desktop.pause(300);
        return field;
    }

    private void until(String number) {
        desktop.until("job " + number + " is open", () -> desktop.activeEditor() instanceof JobEditor j
                && number.equals(j.getPartName()));
    }

    /** Scans while something has the focus, and sees that nothing is typed there. */
    private void scanIn(Control here) {
        assertTrue(here.forceFocus(), here + " takes the focus");
        desktop.until("it has the focus", here::isFocusControl);
        List<String> seen = new ArrayList<>();
        here.addListener(SWT.Modify, e -> seen.add("modified"));
        here.addListener(SWT.DefaultSelection, e -> seen.add("entered"));
        scan(OTHER);
        until(OTHER);
        assertEquals(List.of(), seen);
    }

    private void assertUntouched() {
        assertFalse(editor.isDirty());
        assertFalse(editor.document().canUndo(PartKey.of(PartKind.BOOKING)));
    }

    @Test
    void aScanInAFieldOpensTheJobAndLeavesTheFieldAndItsUndoAsTheyWere() {
        Text field = cursorIn("/machine");
        String before = field.getText();
        assertFalse(before.isEmpty());
        field.setSelection(1, 3);
        List<String> seen = new ArrayList<>();
        field.addListener(SWT.Modify, e -> seen.add(field.getText()));
        scan(OTHER);
        until(OTHER);
        assertEquals(List.of(), seen);
        assertEquals(before, field.getText());
        assertUntouched();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/reportedFault", "/priority", "/promised", "/spendLimit"})
    void aScanInAnyKindOfFieldLeavesItAsItWas(String pointer) {
        Control field = desktop.field(pointer);
        String before = field instanceof Combo c ? c.getText() : ((Text) field).getText();
        scanIn(field);
        assertEquals(before, field instanceof Combo c ? c.getText() : ((Text) field).getText());
        assertUntouched();
    }

    @Test
    void aScanInAGridLeavesItsCellsAsTheyWere() {
        RecordGrid grid = desktop.grid("/parts");
        grid.table().setFocus();
        grid.moveTo(1, 0);
        String before = grid.model().text(1, 0);
        scanIn(grid.table());
        assertEquals(before, grid.model().text(1, 0));
        assertUntouched();
    }

    @Test
    void aScanInAnOpenCellLeavesWhatWasTypedThereAndNoMore() {
        RecordGrid grid = desktop.grid("/parts");
        grid.table().setFocus();
        grid.moveTo(0, grid.model().columns().size() - 1);
        keys("bent", PERSON);
        desktop.until("the cell is open", () -> display.getFocusControl() instanceof Text t && t.getText().equals("bent"));
        scan(OTHER);
        until(OTHER);
        assertEquals("bent", grid.model().text(0, grid.model().columns().size() - 1));
    }

    @Test
    void aScanOnAButtonOrInTheRegisterOpensTheJob() throws Exception {
        scanIn(desktop.field("outline"));
        assertUntouched();
        desktop.open(HERE);
        desktop.register();
        scanIn(desktop.field("register/filter"));
        desktop.open(HERE);
        desktop.register();
        scanIn(desktop.field("register/jobs"));
        assertUntouched();
    }

    @ParameterizedTest
    @ValueSource(strings = {"org.copperbook.office.command.board", "org.copperbook.office.command.month"})
    void aScanOnAPageOverAllJobsOpensTheJob(String page) throws Exception {
        desktop.command(page);
        desktop.pause(300);
        scan(OTHER);
        until(OTHER);
    }

    @Test
    void aScanWithoutAnEditorOpensTheJob() {
        desktop.closeAll();
        scan(OTHER);
        until(OTHER);
    }

    @Test
    void aNumberThatIsNotHereIsSaidAndNothingIsOpened() {
        Text field = cursorIn("/machine");
        String before = field.getText();
        scan("1066-0001");
        desktop.until("the number is said", () -> said(field.getShell(), "1066-0001"));
        assertTrue(((Label) desktop.field("scan/said")).getText().contains("1066-0001"), "also over the window");
        assertSame(editor, desktop.activeEditor());
        assertEquals(before, field.getText());
        assertTrue(field.isFocusControl(), "the cursor stays");
    }

    @Test
    void behindADialogTheJobWaitsAndTheDialogIsLeftAsItWas() {
        Shell window = desktop.page().getWorkbenchWindow().getShell();
        Shell dialog = new Shell(window, SWT.DIALOG_TRIM | SWT.APPLICATION_MODAL);
        dialog.setLayout(new FillLayout());
        Text line = new Text(dialog, SWT.BORDER);
        line.setText("half");
        dialog.setBounds(100, 100, 300, 200);
        dialog.open();
        try {
            line.setFocus();
            desktop.until("the dialog has the keyboard", () -> display.getActiveShell() == dialog && line.isFocusControl());
            scan(OTHER);
            desktop.until("it is said that the job waits", () -> said(window, OTHER));
            assertEquals("half", line.getText());
            assertSame(editor, desktop.activeEditor());
        } finally {
            dialog.dispose();
        }
        until(OTHER);
    }

    @ParameterizedTest
    @ValueSource(ints = {45, PERSON})
    void aPersonWhoTypesQuicklyLosesNothingAlsoOfATextLikeACode(int millis) {
        Text field = cursorIn("/machine");
        field.selectAll();
        String text = "CPBJOB2026-0001 and CPB, CC Cap";
        keys(text, millis);
        desktop.until("all of it stands there, not " + field.getText(), () -> field.getText().equals(text));
        assertSame(editor, desktop.activeEditor());
        keys("\r", millis);
        desktop.until("Enter leaves the field", () -> !field.isFocusControl());
        assertSame(editor, desktop.activeEditor());
        assertEquals(text, editor.document().tree(PartKey.of(PartKind.BOOKING)).at("/machine").asText());
    }

    @Test
    void aCellBegunWithTheFirstLetterOfACodeHoldsAllThatWasTyped() {
        RecordGrid grid = desktop.grid("/parts");
        grid.table().setFocus();
        grid.moveTo(0, grid.model().columns().size() - 1);
        keys("Cap", PERSON);
        desktop.until("all of it stands in the cell", () -> display.getFocusControl() instanceof Text t
                && t.getText().equals("Cap"));
    }

    private static boolean said(Control at, String text) {
        if (at instanceof CLabel c && c.getText() != null && c.getText().contains(text)
                || at instanceof Label l && l.getText().contains(text)) {
            return true;
        }
        if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                if (said(child, text)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void aScanWhileTheTagIsShownOpensTheJobAndTakesTheTagAway() throws Exception {
        desktop.command("org.copperbook.desk.command.tag");
        desktop.until("the tag has the keyboard", () -> desktop.field("tag/label").isFocusControl());
        desktop.pause(300);
        scan(OTHER);
        until(OTHER);
        assertFalse(desktop.shows("tag/card"), "the tag does not stay over the job");
    }
}

package org.copperbook.desk.tests.run;

import java.nio.file.Path;
import java.util.Optional;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.SessionOpening;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/**
 * The product's workbench with somebody in it who types until the process is killed, and, started again with
 * {@code copperbook.typing=read}, takes back what was left and says it. Every word is printed with the moment after it
 * stood in the field, so that whoever kills the process knows what a person had seen by then.
 */
public final class TypingApplication implements IApplication {

    /** Property that says what to do: {@code type} or {@code read}. */
    public static final String MODE = "copperbook.typing";
    /** Number of the job typed into. */
    public static final String JOB = "2026-0008";
    /** Begin of a line about a word typed: the word's number and milliseconds since 1970 stand behind it. */
    public static final String TYPED = "typed ";
    /** Begin of the line with the text that was taken back. */
    public static final String BACK = "back ";

    private static final String FIELD = "/transportDamage";
    private static final int EVERY_MILLIS = 15;

    private final Desktop desktop = new Desktop();
    private int words;

    @Override
    public Object start(IApplicationContext context) {
        var demo = new DeskArguments(Optional.of(Path.of(Platform.getInstallLocation().getURL().getPath(), "demo-data")),
                Optional.empty(), Optional.empty());
        boolean read = "read".equals(System.getProperty(MODE));
        Display display = PlatformUI.createDisplay();
        try (DeskSession session = SessionOpening.open(demo)) {
            PlatformUI.createAndRunWorkbench(display, new TestAdvisor(session, read ? this::read : this::type));
        } finally {
            display.dispose();
        }
        return EXIT_OK;
    }

    private void type() {
        try {
            desktop.beSomebody();
            JobEditor editor = desktop.open(JOB);
            editor.show(PartKey.of(PartKind.BOOKING));
            desktop.settle(editor);
            Text field = (Text) desktop.field(FIELD);
            field.setFocus();
            field.setText("");
            next(field);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void next(Text field) {
        field.insert("w" + words + " ");
        System.out.println(TYPED + words + " " + System.currentTimeMillis());
        System.out.flush();
        words++;
        field.getDisplay().timerExec(EVERY_MILLIS, () -> next(field));
    }

    /** The product itself opens the job again and offers the rest; this only accepts and reads it. */
    private void read() {
        try {
            desktop.until("the job that was typed into offers what was left", () -> desktop.shows("left"));
            JobEditor editor = (JobEditor) desktop.activeEditor();
            desktop.press("left/putBack");
            desktop.until("the text is back", editor::isDirty);
            editor.show(PartKey.of(PartKind.BOOKING));
            desktop.settle(editor);
            System.out.println(BACK + desktop.text(FIELD));
            System.out.flush();
        } finally {
            desktop.closeAll();
            PlatformUI.getWorkbench().close();
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay().syncExec(() -> PlatformUI.getWorkbench().close());
        }
    }
}

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
 * The product's workbench with somebody in it who types into a job or, with {@code type-register}, into a register of the
 * shop until the process is killed, and, started again with {@code copperbook.typing=read} or {@code read-register}, takes
 * back what was left and says it. Every word is printed with the moment after it
 * stood in the field, so that whoever kills the process knows what a person had seen by then.
 */
public final class TypingApplication implements IApplication {

    /** Property that says what to do: {@code type} or {@code read}, with {@code -register} behind it for the shop's. */
    public static final String MODE = "copperbook.typing";
    /** Number of the job typed into. */
    public static final String JOB = "2026-0008";
    /** Begin of a line about a word typed: the word's number and milliseconds since 1970 stand behind it. */
    public static final String TYPED = "typed ";
    /** Begin of the line with the text that was taken back. */
    public static final String BACK = "back ";

    private static final String FIELD = "/transportDamage";
    private static final String OF_REGISTER = "/instruments/0/note";
    private static final String SHOW_REGISTERS = "org.copperbook.office.command.registers";
    private static final int EVERY_MILLIS = 15;

    private final Desktop desktop = new Desktop();
    private int words;

    @Override
    public Object start(IApplicationContext context) {
        var demo = new DeskArguments(Optional.of(Path.of(Platform.getInstallLocation().getURL().getPath(), "demo-data")),
                Optional.empty(), Optional.empty());
        Runnable does = switch (System.getProperty(MODE)) {
            case "read" -> this::read;
            case "read-register" -> this::readRegister;
            case "type-register" -> this::typeRegister;
            default -> this::type;
        };
        Display display = PlatformUI.createDisplay();
        try (DeskSession session = SessionOpening.open(demo)) {
            PlatformUI.createAndRunWorkbench(display, new TestAdvisor(session, does));
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
            begin(FIELD);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void typeRegister() {
        try {
            desktop.beSomebody();
            desktop.command(SHOW_REGISTERS);
            desktop.until("the instruments are read", () -> desktop.shows(OF_REGISTER));
            begin(OF_REGISTER);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void begin(String pointer) {
        Text field = (Text) desktop.field(pointer);
        field.setFocus();
        field.setText("");
        next(field);
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
            say(FIELD);
        } finally {
            end();
        }
    }

    /** The registers open by themselves too. */
    private void readRegister() {
        try {
            desktop.until("the registers offer what was left", () -> desktop.shows("left"));
            desktop.press("left/putBack");
            desktop.until("the text is back", () -> desktop.activeEditor().isDirty() && desktop.shows(OF_REGISTER));
            say(OF_REGISTER);
        } finally {
            end();
        }
    }

    private void say(String pointer) {
        System.out.println(BACK + desktop.text(pointer));
        System.out.flush();
    }

    private void end() {
        desktop.closeAll();
        PlatformUI.getWorkbench().close();
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay().syncExec(() -> PlatformUI.getWorkbench().close());
        }
    }
}

package org.copperbook.desk.shell;

import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.shared.FirstOpening;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/**
 * The window. Ends with 0; with 69 when no window can open on this machine, after saying what is missing; with 2 when
 * the arguments are wrong; with 1 when the store cannot be opened.
 */
public final class DeskApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        DeskArguments arguments;
        try {
            arguments = DeskArguments.parse(args(context.getArguments()));
        } catch (IllegalArgumentException bad) {
            System.err.println(bad.getMessage());
            return 2;
        }
        Display display;
        try {
            display = PlatformUI.createDisplay();
        } catch (RuntimeException | Error failure) {
            Optional<String> missing = MissingDisplay.in(failure);
            if (missing.isEmpty()) {
                throw failure;
            }
            System.err.println(missing.get());
            return MissingDisplay.EXIT_CODE;
        }
        try {
            return run(display, arguments);
        } finally {
            display.dispose();
        }
    }

    private static Object run(Display display, DeskArguments arguments) {
        try {
            Optional<DeskSession> opened = new FirstOpening().open(arguments);
            return opened.isEmpty() ? EXIT_OK : work(display, opened.get());
        } catch (StoreException e) {
            ILog.of(DeskApplication.class).error("the store could not be opened", e);
            System.err.println(e.getMessage());
            MessageDialog.openError(null, DeskWords.text("store.cannotOpen"), e.getMessage());
            return 1;
        } catch (DemoUnreadable e) {
            System.err.println(e.getMessage());
            MessageDialog.openError(null, DeskWords.text("store.cannotOpen"), e.getMessage());
            return 1;
        }
    }

    private static Object work(Display display, DeskSession opened) {
        try (DeskSession session = opened) {
            int code = PlatformUI.createAndRunWorkbench(display, new DeskAdvisor(session));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }

    private static String[] args(Map<?, ?> arguments) {
        return arguments.get(IApplicationContext.APPLICATION_ARGS) instanceof String[] a ? a : new String[0];
    }
}

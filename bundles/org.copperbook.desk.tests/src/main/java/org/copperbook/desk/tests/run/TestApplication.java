package org.copperbook.desk.tests.run;

import java.nio.file.Path;
import java.util.Optional;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * The product's workbench with the window tests inside it: opens the window on the demo workshop in a fresh store, runs
 * every test class of this bundle in the window's own thread, closes it and ends with exit code 0 only if tests ran and
 * none failed or was skipped.
 *
 * <p>System properties: {@code copperbook.tests.reports}, the folder for the reports; {@code copperbook.tests.only}, the
 * simple name of one test class, or another word that {@link TestRun} knows.
 */
public final class TestApplication implements IApplication {

    private int exitCode = 1;

    @Override
    public Object start(IApplicationContext context) {
        var run = new TestRun(Path.of(System.getProperty("copperbook.tests.reports", "reports")),
                System.getProperty("copperbook.tests.only", "*"));
        var demo = new DeskArguments(Optional.of(demoData()), Optional.empty(), Optional.empty());
        Display display = PlatformUI.createDisplay();
        try (TestStore store = TestStore.of(System.getProperty("copperbook.tests.only", "*"), demo);
                DeskSession session = store.open()) {
            PlatformUI.createAndRunWorkbench(display, new TestAdvisor(session, () -> runAndClose(run)));
        } finally {
            display.dispose();
        }
        return exitCode;
    }

    private static Path demoData() {
        return Path.of(Platform.getInstallLocation().getURL().getPath(), "demo-data");
    }

    private void runAndClose(TestRun run) {
        try {
            exitCode = run.execute() ? 0 : 1;
        } finally {
            closeWithoutAsking(PlatformUI.getWorkbench());
        }
    }

    /** A test that failed half-way leaves unsaved editors; nobody is there to answer whether to save them. */
    private static void closeWithoutAsking(IWorkbench workbench) {
        for (IWorkbenchWindow window : workbench.getWorkbenchWindows()) {
            for (IWorkbenchPage page : window.getPages()) {
                page.closeAllEditors(false);
            }
        }
        // The workbench tells its parts that it has started; closed before that is told, they report an error.
        while (workbench.getDisplay().readAndDispatch()) {
        }
        workbench.close();
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}

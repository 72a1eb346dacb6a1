package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.copperbook.desk.backup.AutomaticBackups;
import org.copperbook.desk.theme.Look;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets up the workbench round one session. */
public class DeskAdvisor extends WorkbenchAdvisor {

    private final DeskSession session;
    private final AutomaticBackups backups;
    private SizePreference size;

    public DeskAdvisor(DeskSession session) {
        this.session = session;
        backups = new AutomaticBackups(session);
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
    }

    @Override
    public void preStartup() {
        super.preStartup();
        PlatformUI.getWorkbench().getService(IEclipseContext.class).set(DeskSession.class, session);
        size = new SizePreference(Look.of(Display.getCurrent()));
        size.follow();
    }

    @Override
    public void postStartup() {
        super.postStartup();
        backups.begin();
    }

    @Override
    public void postShutdown() {
        super.postShutdown();
        backups.end();
        if (size != null) {
            size.forget();
        }
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Desk.FRONT_OFFICE;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new DeskWindowAdvisor(configurer, session);
    }
}

package org.copperbook.desk.shell;

import java.util.Set;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.BeginningInput;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.editor.LeftJobs;
import org.copperbook.desk.page.ShopPages;
import org.copperbook.desk.people.IdleSignOut;
import org.copperbook.desk.people.SignInDialog;
import org.copperbook.desk.scan.ScannedCodes;
import org.copperbook.desk.scan.ScannedJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The window: its title, its first page, and what opens in it at the start. */
final class DeskWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final double OF_SCREEN = 0.92;
    private static final int WIDEST = 1800;
    private static final int TALLEST = 1200;

    private final DeskSession session;
    private final Runnable retitle;
    private final StatusItems status;
    private final IdleSignOut idle;
    private ScannedCodes scanned;

    DeskWindowAdvisor(IWorkbenchWindowConfigurer configurer, DeskSession session) {
        super(configurer);
        this.session = session;
        this.status = new StatusItems(session);
        Display display = Display.getCurrent();
        this.idle = new IdleSignOut(display, session, System::nanoTime);
        this.retitle = () -> display.asyncExec(() -> getWindowConfigurer().setTitle(title()));
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new ActionBarAdvisor(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer c = getWindowConfigurer();
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        c.setInitialSize(new Point(Math.min(WIDEST, (int) (screen.width * OF_SCREEN)),
                Math.min(TALLEST, (int) (screen.height * OF_SCREEN))));
        c.setShowCoolBar(true);
        c.setShowStatusLine(true);
        c.setShowPerspectiveBar(true);
        c.setShowProgressIndicator(true);
        c.setTitle(title());
        session.onShop(retitle);
    }

    @Override
    public void postWindowCreate() {
        status.addTo(getWindowConfigurer().getActionBarConfigurer().getStatusLineManager());
    }

    @Override
    public void postWindowOpen() {
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        // After an unexpected end the workbench puts back tabs that it cannot fill; what was typed comes back below.
        page.closeEditors(page.getEditorReferences(), false);
        page.zoomOut();
        try {
            if (!session.isBegun()) {
                page.openEditor(new BeginningInput(), Desk.BEGINNING);
            } else if (session.arguments().job().isPresent()) {
                open(page, session.arguments().job().get());
            } else {
                hintWhenEmpty(page);
            }
        } catch (PartInitException e) {
            ILog.of(DeskWindowAdvisor.class).error("the first page could not be opened", e);
        }
        offerLeft(page);
        idle.begin();
        scanned = new ScannedCodes(Display.getCurrent(),
                new ScannedJob(Display.getCurrent(), getWindowConfigurer().getWindow(), session));
        scanned.begin();
        if (session.hasSecrets() && session.who().isEmpty()) {
            // Only once the window stands: what opens earlier is lost behind it.
            Display.getCurrent().asyncExec(() -> SignInDialog.open(null));
        }
    }

    /** Says how the first machine is booked in while there is no job. */
    private void hintWhenEmpty(IWorkbenchPage page) {
        Display display = Display.getCurrent();
        session.background().execute(() -> {
            if (session.store().register(RegisterQuery.first(0)).total() == 0) {
                display.asyncExec(() -> beginning(page));
            }
        });
    }

    private static void beginning(IWorkbenchPage page) {
        try {
            page.openEditor(new BeginningInput(), Desk.BEGINNING);
        } catch (PartInitException e) {
            ILog.of(DeskWindowAdvisor.class).error("the hint for an empty workshop could not be opened", e);
        }
    }

    /** Opens again what somebody was typing into when the program last ended; each job or page of the shop offers its text back. */
    private void offerLeft(IWorkbenchPage page) {
        Display display = Display.getCurrent();
        session.background().execute(() -> {
            for (JobInput job : LeftJobs.of(session.store())) {
                display.asyncExec(() -> job.openIn(page));
            }
            Set<PartKind> ofShop = LeftJobs.ofShop(session.store());
            if (!ofShop.isEmpty()) {
                display.asyncExec(() -> ShopPages.open(Platform.getExtensionRegistry(), ofShop, page));
            }
        });
    }

    /** Tabs are not put back: one that fills the window would leave the register as an icon beside nothing at the next start. */
    @Override
    public boolean preWindowShellClose() {
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        if (page != null) {
            page.zoomOut();
        }
        return true;
    }

    @Override
    public void postWindowClose() {
        session.removeOnShop(retitle);
        status.forget();
        idle.end();
        if (scanned != null) {
            scanned.end();
        }
    }

    private void open(IWorkbenchPage page, String number) {
        JobStore store = session.store();
        Display display = Display.getCurrent();
        session.background().execute(() -> store.idOf(number)
                .ifPresent(id -> display.asyncExec(() -> new JobInput(id, number).openIn(page))));
    }

    private String title() {
        String name = session.shop().workshop().name();
        String shop = name == null || name.isBlank() ? DeskWords.text("title.product")
                : DeskWords.text("title.shop", name);
        return session.isDemo() ? DeskWords.text("title.demo", shop) : shop;
    }
}

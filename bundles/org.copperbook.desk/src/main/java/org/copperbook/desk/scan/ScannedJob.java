package org.copperbook.desk.scan;

import java.util.Optional;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.store.StoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;

/**
 * Opens the job whose number was scanned. Behind a dialog that has to be answered first it waits until that is closed; a
 * number that is not in the store is said where people look.
 */
public final class ScannedJob {

    private static final int MODAL = SWT.PRIMARY_MODAL | SWT.APPLICATION_MODAL | SWT.SYSTEM_MODAL;

    private static final String GIVES_WAY = "org.copperbook.scan.givesWay";

    private final Display display;
    private final IWorkbenchWindow window;
    private final DeskSession session;
    private final ScanNotice notice = new ScanNotice();
    private String waiting;

    /** @param window where jobs are opened */
    public ScannedJob(Display display, IWorkbenchWindow window, DeskSession session) {
        this.display = display;
        this.window = window;
        this.session = session;
    }

    /** Has a window that only shows something close when a scanned job is opened: it would stay over the job, without the keyboard. */
    public static void givesWay(Shell showing) {
        showing.setData(GIVES_WAY, Boolean.TRUE);
    }

    /** A number was scanned; for the window's thread. */
    void scanned(String number) {
        // Not behind the checks of the job that is open.
        Thread looking = new Thread(() -> {
            try {
                Optional<ProvisionalTag> tag = ProvisionalTag.read(number);
                Optional<JobInput> job = tag.isPresent() ? numbered(tag.get().jobId())
                        : session.store().idOf(number).map(id -> new JobInput(id, number));
                answer(() -> found(job.or(() -> tag.flatMap(this::waiting)), number));
            } catch (StoreException failed) {
                answer(() -> say(failed.getMessage()));
            }
        }, "copperbook-scanned");
        looking.setDaemon(true);
        looking.start();
    }

    private void answer(Runnable answer) {
        if (!display.isDisposed()) {
            display.asyncExec(answer);
        }
    }

    /** The job that a provisional tag was printed for, once it has its number. */
    private Optional<JobInput> numbered(String jobId) {
        return session.store().current(jobId, PartKey.of(PartKind.BOOKING))
                .map(booking -> new JobInput(jobId, session.store().load(jobId).number()));
    }

    /** The machine of a provisional tag that is open here and still waits for its number. */
    private Optional<JobInput> waiting(ProvisionalTag tag) {
        JobInput job = new JobInput(tag.jobId(), "");
        return window.getActivePage() != null && window.getActivePage().findEditor(job) != null ? Optional.of(job)
                : Optional.empty();
    }

    private void found(Optional<JobInput> job, String number) {
        if (window.getShell() == null || window.getShell().isDisposed()) {
            return;
        }
        Optional<String> provisional = ProvisionalTag.read(number).map(ProvisionalTag::name);
        if (job.isEmpty()) {
            display.beep();
            say(provisional.map(name -> DeskWords.text("scan.notNumbered", name))
                    .orElseGet(() -> DeskWords.text("scan.unknown", number)));
            return;
        }
        String name = job.get().isNew() ? provisional.orElse("") : job.get().number();
        Shell dialog = dialog();
        if (dialog == null) {
            open(job.get(), name);
            return;
        }
        boolean first = waiting == null;
        waiting = number;
        say(DeskWords.text("scan.dialog", name));
        if (first) {
            dialog.addDisposeListener(e -> display.asyncExec(this::afterDialog));
        }
    }

    /** Of several tags scanned while a dialog was open the last one counts. */
    private void afterDialog() {
        String number = waiting;
        waiting = null;
        if (number != null) {
            scanned(number);
        }
    }

    private void open(JobInput job, String name) {
        notice.hide();
        if (window.getActivePage() != null) {
            for (Shell over : window.getShell().getShells()) {
                if (!over.isDisposed() && over.getData(GIVES_WAY) != null) {
                    over.close();
                }
            }
            window.getShell().forceActive();
            job.openIn(window.getActivePage());
            session.say(DeskWords.text("scan.opened", name));
        }
    }

    /** The dialog that has to be answered before the window can be used; null when there is none. */
    private Shell dialog() {
        Shell active = display.getActiveShell();
        return active != null && active != window.getShell() && (active.getStyle() & MODAL) != 0 ? active : null;
    }

    /** In the status line, and over the window at work, since a dialog or the length of a bench hides the line. */
    private void say(String words) {
        session.say(words);
        Shell active = display.getActiveShell();
        notice.show(active == null ? window.getShell() : active, words);
    }
}

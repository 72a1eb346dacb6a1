package org.copperbook.winding.memory;

import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.cards.CardMappings;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.copperbook.store.StoreException;
import org.copperbook.store.UserFolders;
import org.copperbook.store.memory.SameCard;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.PageChangingEvent;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.widgets.Shell;

/** Takes in old winding cards from a workbook or a text file, step by step. */
public final class TakeInWizard extends Wizard {

    private static final int WIDTH_CHARS = 120;
    private static final int HEIGHT_ROWS = 22;

    private final DeskSession session;
    private final Words words;
    private final CardImport cards;
    private final Runnable after;
    private final ChooseFilePage choose;
    private final ColumnsPage columns;
    private final RowsPage rows;
    private final DonePage done;

    private TakeInWizard(DeskSession session, Words words, WindingRole role, Runnable after) {
        this.session = session;
        this.words = words;
        this.after = after;
        cards = new CardImport(session.json(), new CardMappings(UserFolders.current().home().resolve("card-mappings"),
                session.json()), role);
        choose = new ChooseFilePage(cards, words);
        columns = new ColumnsPage(cards, words);
        rows = new RowsPage(cards, words);
        done = new DonePage(cards, words);
        setWindowTitle(words.text("cards.title"));
        setNeedsProgressMonitor(true);
    }

    /** Opens the wizard; {@code after} is called when cards were taken in. */
    public static void open(Shell over, DeskSession session, Words words, WindingRole role, Runnable after) {
        TakeInWizard wizard = new TakeInWizard(session, words, role, after);
        WizardDialog dialog = new WizardDialog(over, wizard);
        Look look = Look.of(over);
        dialog.setPageSize(look.chars(WIDTH_CHARS), look.rowHeight() * HEIGHT_ROWS);
        dialog.setBlockOnOpen(false);
        dialog.addPageChangingListener(wizard::changing);
        dialog.create();
        look.dress(dialog.getShell());
        dialog.open();
    }

    @Override
    public void addPages() {
        addPage(choose);
        addPage(columns);
        addPage(rows);
        addPage(done);
    }

    /** The rows are read when the mapping is left, with progress, and shown when they are there. */
    private void changing(PageChangingEvent e) {
        if (e.getCurrentPage() == choose && e.getTargetPage() == columns) {
            columns.fill();
        }
        if (e.getCurrentPage() == columns && e.getTargetPage() == rows) {
            e.doit = readRows();
        }
    }

    private boolean readRows() {
        columns.setErrorMessage(null);
        try {
            getContainer().run(true, true, monitor -> {
                monitor.beginTask(words.text("cards.reading"), org.eclipse.core.runtime.IProgressMonitor.UNKNOWN);
                try {
                    cards.read(monitor);
                } catch (UnreadableTableException | OperationCanceledException e) {
                    throw new InvocationTargetException(e);
                }
            });
            rows.fill();
            return true;
        } catch (InvocationTargetException e) {
            columns.setErrorMessage(e.getCause() instanceof OperationCanceledException
                    ? words.text("cards.readingStopped") : said(e));
        } catch (InterruptedException e) {
            columns.setErrorMessage(words.text("cards.readingStopped"));
        }
        return false;
    }

    private static String said(InvocationTargetException e) {
        Throwable cause = e.getCause();
        if (!(cause instanceof UnreadableTableException) && !(cause instanceof StoreException)) {
            ILog.of(TakeInWizard.class).error("old cards could not be taken in", cause);
        }
        return cause.getMessage() == null ? cause.toString() : cause.getMessage();
    }

    @Override
    public boolean canFinish() {
        IWizardPage now = getContainer().getCurrentPage();
        return now == rows && rows.isPageComplete() || now == done;
    }

    @Override
    public boolean performFinish() {
        if (getContainer().getCurrentPage() == done) {
            return true;
        }
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            rows.setErrorMessage(words.text("proposal.who"));
            return false;
        }
        takeIn(who.get());
        return false;
    }

    private void takeIn(String who) {
        keepMapping();
        SameCard same = rows.newRevision() ? SameCard.NEW_REVISION : SameCard.REFUSE;
        String why = words.text("cards.why", cards.path().getFileName());
        String contradicts = words.text("cards.contradicts");
        try {
            getContainer().run(true, true, monitor -> {
                try {
                    cards.takeIn(session.store().memory(), who, why, same, contradicts, monitor);
                } catch (RuntimeException e) {
                    throw new InvocationTargetException(e);
                }
            });
            done.fill();
            getContainer().showPage(done);
            after.run();
        } catch (InvocationTargetException e) {
            rows.setErrorMessage(words.text("cards.failed", said(e)));
        } catch (InterruptedException e) {
            rows.setErrorMessage(words.text("cards.failed", e.getMessage()));
        }
    }

    /** A mapping that cannot be kept stands in nobody's way; it is only asked again next time. */
    private void keepMapping() {
        try {
            cards.mappings().keep(cards.mapping());
        } catch (WorkbookNotWrittenException e) {
            ILog.of(TakeInWizard.class).warn("the mapping of the columns could not be kept", e);
            ((WizardPage) getContainer().getCurrentPage()).setMessage(words.text("cards.mappingNotKept",
                    e.getMessage()), IMessageProvider.WARNING);
        }
    }
}

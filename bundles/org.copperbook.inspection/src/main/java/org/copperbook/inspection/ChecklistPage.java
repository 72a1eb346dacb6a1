package org.copperbook.inspection;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.jobs.inspection.ChecklistTemplate.BadLinesException;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.operation.ModalContext;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** The workshop's checklist for the as-found inspection, a line for each point. */
public final class ChecklistPage extends PreferencePage implements IWorkbenchPreferencePage {

    private static final PartKey KEY = PartKey.of(PartKind.CHECKLIST);
    private static final int WIDTH_CHARS = 48;
    private static final int LINES = 16;

    private final Words words = Words.of(ChecklistPage.class);
    private Text lines;
    private Label problem;
    private String shown = "";
    /** What the list was made from; null when the workshop has none yet. */
    private Saved based;

    @Override
    public void init(IWorkbench workbench) {
        setDescription(null);
    }

    @Override
    protected Control createContents(Composite parent) {
        noDefaultAndApplyButton();
        Look look = Look.of(parent);
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(page);
        label(page, look).setText(words.text("checklist.words"));
        lines = new Text(page, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
        lines.setData(Desk.ID, "checklist/lines");
        SpokenName.give(lines, words.text("checklist.lines"));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(WIDTH_CHARS), LINES * look.lineHeight()).applyTo(lines);
        problem = label(page, look);
        problem.setData(Desk.ID, "checklist/problem");
        based = inAThread(s -> s.current(JobStore.SHOP, KEY)).orElse(null);
        ChecklistTemplate own = list(based);
        shown = (own.points().isEmpty() ? ShippedChecklist.of(words) : own).text();
        lines.setText(shown);
        look.dress(page);
        problem.setForeground(look.palette().problem());
        Reach.ensure(page);
        return page;
    }

    private static Label label(Composite page, Look look) {
        Label label = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(WIDTH_CHARS), SWT.DEFAULT).applyTo(label);
        return label;
    }

    @Override
    public boolean performOk() {
        if (lines == null || text().equals(shown)) {
            return true;
        }
        Optional<String> who = DeskSession.ofWorkbench().who();
        if (who.isEmpty()) {
            return refuse(words.text("checklist.nobody"));
        }
        String why = words.text("checklist.why");
        try {
            ChecklistTemplate template = ChecklistTemplate.of(text()).madeFrom(list(based));
            int revision = based == null ? 0 : based.number();
            based = inAThread(s -> s.saveShopPart(KEY, template, revision, who.get(), why));
            shown = text();
            return true;
        } catch (BadLinesException e) {
            return refuse(words.text("checklist.badLines",
                    e.lines().stream().map(String::valueOf).collect(Collectors.joining(", "))));
        } catch (ConflictException e) {
            return refuse(conflict(e.theirs()));
        } catch (StoreException e) {
            ILog.of(ChecklistPage.class).warn("the checklist was not kept", e);
            return refuse(e.getMessage());
        }
    }

    /** Says what the other one changed; whoever presses again knows it, and puts this list in its place. */
    private String conflict(Saved theirs) {
        List<String> before = List.of(list(based).text().split("\n"));
        List<String> now = List.of(list(theirs).text().split("\n"));
        String added = now.stream().filter(l -> !before.contains(l)).collect(Collectors.joining("; "));
        String gone = before.stream().filter(l -> !now.contains(l)).collect(Collectors.joining("; "));
        based = theirs;
        return words.text("checklist.conflict", DeskSession.ofWorkbench().shop().nameOf(theirs.revision().who()),
                added.isEmpty() ? "\u2013" : added, gone.isEmpty() ? "\u2013" : gone);
    }

    private static ChecklistTemplate list(Saved kept) {
        return kept == null ? new ChecklistTemplate(ChecklistTemplate.SCHEMA, null, null) : (ChecklistTemplate) kept.part();
    }

    /** Goes to the store in a thread of its own, so that the window goes on. */
    private <T> T inAThread(Function<JobStore, T> work) {
        JobStore store = DeskSession.ofWorkbench().store();
        AtomicReference<T> result = new AtomicReference<>();
        try {
            ModalContext.run(monitor -> result.set(work.apply(store)), true, new NullProgressMonitor(),
                    getShell().getDisplay());
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof StoreException refused) {
                throw refused;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return result.get();
    }

    private String text() {
        return lines.getText().replace("\r\n", "\n");
    }

    /** The dialog stays open with what was typed. */
    private boolean refuse(String why) {
        problem.setText(why);
        problem.getParent().layout(true, true);
        return false;
    }
}

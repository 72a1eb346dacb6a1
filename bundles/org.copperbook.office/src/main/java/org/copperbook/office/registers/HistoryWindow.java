package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Placing;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.history.FieldChange;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Who changed a part when, field by field; an older revision can be put on the screen again, to be saved as a new one. */
public final class HistoryWindow {

    private static final int WIDTH = 84;
    private static final int HEIGHT = 24;
    private static final String[] REVISIONS = {"history.number", "history.when", "history.who", "history.why"};
    private static final String[] FIELDS = {"history.field", "history.before", "history.after"};

    private final Shell shell;
    private final DeskSession session;
    private final Words words;
    private final String owner;
    private final PartKey key;
    private final Consumer<Part> back;
    private final Table revisions;
    private final FittedColumns revisionWidths;
    private final Table fields;
    private final FittedColumns fieldWidths;
    private final Label said;
    private final Button goBack;
    private List<Saved> history = List.of();

    /** @param back gets the older part that is wanted again; null for a part that goes back by no button */
    HistoryWindow(Shell parent, DeskSession session, Words words, String title, PartKey key, Consumer<Part> back) {
        this(parent, session, words, title, JobStore.SHOP, key, back);
    }

    /**
     * The history of a part of a job.
     *
     * @param owner key of the job
     * @param back  gets the older part that is wanted again
     */
    public HistoryWindow(Shell parent, DeskSession session, Words words, String title, String owner, PartKey key,
            Consumer<Part> back) {
        this.owner = owner;
        this.session = session;
        this.words = words;
        this.key = key;
        this.back = back;
        Look look = Look.of(parent);
        shell = new Shell(parent, SWT.SHELL_TRIM);
        shell.setText(words.text("history.title", title));
        shell.setData(Desk.ID, "history.window");
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 6).applyTo(shell);
        revisions = table("history.revisions", REVISIONS);
        revisionWidths = new FittedColumns(revisions, new int[REVISIONS.length]);
        revisions.addListener(SWT.Selection, e -> showFields());
        fields = table("history.fields", FIELDS);
        fieldWidths = new FittedColumns(fields, new int[FIELDS.length]);
        said = look.as(Look.Role.TEXT, new Label(shell, SWT.WRAP));
        said.setData(Desk.ID, "history.said");
        said.setText(words.text("registers.reading"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        Composite bottom = new Composite(shell, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(bottom);
        goBack = back == null ? null : PushButton.in(bottom, words, "history.goBack", this::goBack);
        letGoBack(false);
        PushButton.in(bottom, words, "import.close", shell::close);
        look.dress(shell);
        Reach.ensure(shell);
        Placing.over(shell, shell.computeSize(look.chars(WIDTH), look.rowHeight() * HEIGHT));
    }

    private Table table(String id, String[] heads) {
        Table t = Look.of(shell).as(Look.Role.TEXT, new Table(shell, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        t.setHeaderVisible(true);
        t.setData(Desk.ID, id);
        SpokenName.give(t, words.text(id));
        for (String head : heads) {
            new TableColumn(t, SWT.LEFT).setText(words.text(head));
        }
        Rows.dress(t, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(Look.of(shell).chars(WIDTH), Look.of(shell).rowHeight() * 6)
                .applyTo(t);
        return t;
    }

    /** Shows the window and reads the history in the background. */
    public void open() {
        shell.open();
        JobStore store = session.store();
        new DeskJob(words.text("registers.reading"), monitor -> {
            try {
                List<Saved> all = store.history(owner, key);
                later(() -> show(all));
            } catch (StoreException e) {
                ILog.of(HistoryWindow.class).error("the history of " + key + " could not be read", e);
                later(() -> said.setText(e.getMessage()));
            }
        }).schedule();
    }

    private void later(Runnable does) {
        shell.getDisplay().asyncExec(() -> {
            if (!shell.isDisposed()) {
                does.run();
            }
        });
    }

    private void show(List<Saved> all) {
        history = all;
        Days days = Days.ofLocale();
        for (int i = all.size() - 1; i >= 0; i--) {
            Saved s = all.get(i);
            TableItem item = new TableItem(revisions, SWT.NONE);
            item.setData(i);
            item.setText(new String[] {Integer.toString(s.number()), days.moment(s.revision().savedAt()),
                    session.shop().nameOf(s.revision().who()), s.revision().why()});
        }
        revisionWidths.fit();
        said.setText(words.text(all.isEmpty() ? "history.none" : back == null ? "history.saidOnly" : "history.said"));
        if (!all.isEmpty()) {
            revisions.setSelection(0);
            showFields();
        }
        revisions.setFocus();
        shell.layout(true, true);
    }

    private void showFields() {
        fields.removeAll();
        if (revisions.getSelectionCount() == 1) {
            int at = (Integer) revisions.getSelection()[0].getData();
            JsonNode before = at == 0 ? session.json().mapper().createObjectNode()
                    : session.json().tree(history.get(at - 1).part());
            for (FieldChange c : FieldChange.between(before, session.json().tree(history.get(at).part()))) {
                if (!c.path().equals(List.of("schema"))) {
                    new TableItem(fields, SWT.NONE).setText(new String[] {inWords(c.path()), c.before(), c.after()});
                }
            }
            letGoBack(at < history.size() - 1);
        }
        fieldWidths.fit();
    }

    private void letGoBack(boolean older) {
        if (goBack != null) {
            goBack.setEnabled(older);
        }
    }

    /** Names of fields and people in words; what names a row stays as it is. */
    private String inWords(List<String> path) {
        FieldWords fields = new FieldWords(words, key.kind());
        return path.stream().map(p -> session.shop().people().containsKey(p) ? session.shop().nameOf(p) : fields.of(p))
                .collect(Collectors.joining(" \u2013 "));
    }

    private void goBack() {
        if (revisions.getSelectionCount() == 1) {
            Part part = history.get((Integer) revisions.getSelection()[0].getData()).part();
            shell.close();
            back.accept(part);
        }
    }
}

package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BiPredicate;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Placing;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.Doubles;
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

/** Pairs of customers who may be one, with why; either can be merged into the other. */
final class DoublesWindow {

    private static final int WIDTH = 110;
    private static final int HEIGHT = 20;
    private static final String[] HEADS = {"doubles.first", "doubles.second", "doubles.why"};

    private final Shell shell;
    private final Words words;
    private final BiPredicate<String, String> merge;
    private final Table pairs;
    private final FittedColumns widths;
    private final Label said;
    private final List<Button> choices = new ArrayList<>();
    private DeskJob running;

    /** @param merge merges the first key's customer into the second's; whether it did */
    DoublesWindow(Shell parent, Words words, BiPredicate<String, String> merge) {
        this.words = words;
        this.merge = merge;
        Look look = Look.of(parent);
        shell = new Shell(parent, SWT.SHELL_TRIM);
        shell.setText(words.text("doubles.title"));
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 6).applyTo(shell);
        said = look.as(Look.Role.TEXT, new Label(shell, SWT.WRAP));
        said.setData(Desk.ID, "doubles.said");
        said.setText(words.text("doubles.looking"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        pairs = look.as(Look.Role.TEXT, new Table(shell, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        pairs.setHeaderVisible(true);
        pairs.setData(Desk.ID, "doubles.pairs");
        SpokenName.give(pairs, words.text("doubles.title"));
        for (String head : HEADS) {
            new TableColumn(pairs, SWT.LEFT).setText(words.text(head));
        }
        widths = new FittedColumns(pairs, new int[HEADS.length]);
        Rows.dress(pairs, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(WIDTH), look.rowHeight() * 8).applyTo(pairs);
        Composite bottom = new Composite(shell, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(bottom);
        choices.add(PushButton.in(bottom, words, "doubles.keepFirst", () -> merge(false)));
        choices.add(PushButton.in(bottom, words, "doubles.keepSecond", () -> merge(true)));
        PushButton.in(bottom, words, "import.close", shell::close);
        shell.addListener(SWT.Dispose, e -> stop());
        look.dress(shell);
        Reach.ensure(shell);
        Placing.over(shell, shell.computeSize(look.chars(WIDTH), look.rowHeight() * HEIGHT));
    }

    /** Looks for doubles in the background; the progress can be stopped where the window shows it, or by closing. */
    void open(Map<String, Customer> customers) {
        shell.open();
        running = new DeskJob(words.text("doubles.looking"), monitor -> {
            monitor.beginTask(words.text("doubles.looking"), customers.size());
            try {
                int[] told = {0};
                List<Doubles.Pair> found = Doubles.find(customers, n -> {
                    monitor.worked(Math.max(0, n - told[0]));
                    told[0] = n;
                    return !monitor.isCanceled();
                });
                shell.getDisplay().asyncExec(() -> show(customers, found));
            } catch (CancellationException stopped) {
                shell.getDisplay().asyncExec(() -> say(words.text("doubles.stopped")));
            }
        });
        running.setUser(true);
        running.schedule();
    }

    private void stop() {
        if (running != null) {
            running.cancel();
        }
    }

    private void show(Map<String, Customer> customers, List<Doubles.Pair> found) {
        if (shell.isDisposed()) {
            return;
        }
        for (Doubles.Pair p : found) {
            TableItem item = new TableItem(pairs, SWT.NONE);
            item.setData(p);
            item.setText(new String[] {name(customers.get(p.first())), name(customers.get(p.second())), String.join(", ",
                    p.why().stream().sorted(Comparator.naturalOrder()).map(words::of).toList())});
        }
        widths.fit();
        if (!found.isEmpty()) {
            pairs.setSelection(0);
            pairs.setFocus();
        }
        choices.forEach(b -> b.setEnabled(!found.isEmpty()));
        say(words.text(found.isEmpty() ? "doubles.none" : "doubles.found", found.size()));
    }

    private static String name(Customer c) {
        return c.address() == null ? String.valueOf(c.name()) : c.name() + ", " + c.address().replaceAll("\\R+", ", ");
    }

    private void merge(boolean firstGoes) {
        if (pairs.getSelectionCount() != 1) {
            say(words.text("registers.chooseFirst"));
            return;
        }
        int at = pairs.getSelectionIndex();
        Doubles.Pair p = (Doubles.Pair) pairs.getItem(at).getData();
        boolean done = firstGoes ? merge.test(p.first(), p.second()) : merge.test(p.second(), p.first());
        say(words.text(done ? "doubles.merged" : "doubles.notMerged"));
        if (done) {
            pairs.remove(at);
            pairs.setSelection(Math.min(at, pairs.getItemCount() - 1));
        }
    }

    private void say(String text) {
        if (!shell.isDisposed()) {
            said.setText(text);
            shell.layout(true, true);
        }
    }
}

package org.copperbook.runup.plan;

import java.util.List;
import java.util.function.Predicate;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.check.PlannedStep;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The test plan on the page: step by step with level, cautions and state; Enter or the button goes to the readings. */
public final class PlanArea {

    private static final String[] COLUMNS = {"plan.step", "plan.state", "plan.level", "plan.cautions"};

    private final Words words;
    private final Predicate<String> reveal;
    private final Table table;
    private final Label why;
    private final FittedColumns widths;
    private List<PlannedStep> shown = List.of();

    /** @param reveal puts the cursor to a JSON pointer of the part */
    public PlanArea(Composite area, Words words, Predicate<String> reveal) {
        this.words = words;
        this.reveal = reveal;
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Look look = Look.of(area);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        table.setData(Desk.ID, "plan");
        SpokenName.give(table, words.text("plan.title"));
        Rows.dress(table, column -> false);
        table.setHeaderVisible(true);
        for (int i = 0; i < COLUMNS.length; i++) {
            TableColumn c = new TableColumn(table, SWT.NONE);
            c.setText(words.text(COLUMNS[i]));
        }
        widths = new FittedColumns(table, new int[COLUMNS.length]);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
        why = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        why.setForeground(look.palette().muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(why);
        Button go = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        go.setText(words.text("plan.go"));
        go.setData(Desk.ID, "plan.go");
        go.addListener(SWT.Selection, e -> go());
        table.addListener(SWT.DefaultSelection, e -> go());
        table.addListener(SWT.Selection, e -> tell());
    }

    /** Shows the plan as it stands now. */
    public void show(List<PlannedStep> steps) {
        if (steps.equals(shown)) {
            return;
        }
        int selected = table.getSelectionIndex();
        boolean sameRows = steps.size() == table.getItemCount();
        shown = List.copyOf(steps);
        if (!sameRows) {
            table.removeAll();
        }
        for (int i = 0; i < steps.size(); i++) {
            PlannedStep s = steps.get(i);
            TableItem item = sameRows ? table.getItem(i) : new TableItem(table, SWT.NONE);
            String state = s.required() ? s.stateWord() : words.text("plan.agreed", s.stateWord());
            item.setText(new String[] {(i + 1) + "  " + s.title(), state, s.level(), s.cautionTitle().orElse("")});
        }
        if (selected >= 0 && selected < table.getItemCount()) {
            table.select(selected);
        }
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT,
                table.getHeaderHeight() + steps.size() * table.getItemHeight() + 4).applyTo(table);
        widths.fit();
        tell();
        table.requestLayout();
    }

    private void tell() {
        int i = table.getSelectionIndex();
        String text = i < 0 ? words.text("plan.choose") : shown.get(i).source().isEmpty() ? shown.get(i).why()
                : shown.get(i).why() + "  " + words.text("plan.source", shown.get(i).source());
        if (!text.equals(why.getText())) {
            why.setText(text);
            why.requestLayout();
        }
    }

    private void go() {
        int i = table.getSelectionIndex();
        if (i >= 0) {
            reveal.test(shown.get(i).path());
        }
    }
}

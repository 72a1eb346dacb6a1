package org.copperbook.winding.count;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Where counts part: group by group, coil by coil, and in the strands; what each said and what stands. */
final class DifferencesTable {

    private static final int MOST_ROWS = 10;
    private static final int MOST_COUNTS = 6;
    private static final int PLACE_CHARS = 22;
    private static final int COUNT_CHARS = 18;

    private final Words words;
    private final Table table;

    DifferencesTable(Composite parent, Words words) {
        this.words = words;
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL));
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        table.setData(Desk.ID, "count.differences");
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(table);
        table.setVisible(false);
        table.setSize(look.chars(PLACE_CHARS), MOST_ROWS * look.rowHeight());
    }

    /** Shows the differences of a winding's counts, with the names of those who counted. */
    void show(WindingData winding, CountComparison counts, java.util.function.UnaryOperator<String> nameOf) {
        List<List<String>> rows = counts.differences().stream().map(this::row).toList();
        List<String> heads = new ArrayList<>(List.of(words.text("count.where")));
        winding.counts().stream().filter(TurnCount::handedIn).limit(MOST_COUNTS)
                .forEach(c -> heads.add(words.text("count.of", c.ordinal(), nameOf.apply(c.by()))));
        heads.add(words.text("count.stands"));
        table.setRedraw(false);
        columns(heads);
        table.removeAll();
        rows.forEach(r -> new TableItem(table, SWT.NONE).setText(r.toArray(String[]::new)));
        table.setRedraw(true);
        visible(!rows.isEmpty(), rows.size());
    }

    void hide() {
        table.removeAll();
        visible(false, 0);
    }

    private List<String> row(CountComparison.Difference d) {
        List<String> row = new ArrayList<>();
        row.add(d.coil() == CountComparison.STRANDS ? words.text("count.strands")
                : words.text("count.groupCoil", Integer.toString(d.group()), d.coil()));
        d.said().stream().limit(MOST_COUNTS).map(this::said).forEach(row::add);
        row.add(d.isOpen() ? words.text("count.open") : said(d.agreed()));
        return row;
    }

    private String said(Integer turns) {
        return turns == null ? words.text("count.notCounted") : turns == 0 ? words.text("count.noCoil")
                : Integer.toString(turns);
    }

    private void columns(List<String> heads) {
        List<String> now = List.of(table.getColumns()).stream().map(TableColumn::getText).collect(Collectors.toList());
        if (now.equals(heads)) {
            return;
        }
        for (TableColumn c : table.getColumns()) {
            c.dispose();
        }
        Look look = Look.of(table);
        for (int i = 0; i < heads.size(); i++) {
            TableColumn c = new TableColumn(table, SWT.LEFT);
            c.setText(heads.get(i));
            c.setWidth(look.chars(Math.max(i == 0 ? PLACE_CHARS : COUNT_CHARS, heads.get(i).length() + 3)));
        }
    }

    private void visible(boolean now, int rows) {
        GridData data = (GridData) table.getLayoutData();
        int height = table.getHeaderHeight() + (Math.min(MOST_ROWS, rows) + 1) * Look.of(table).rowHeight();
        if (now == table.getVisible() && height == data.heightHint) {
            return;
        }
        data.heightHint = height;
        if (now != table.getVisible()) {
            table.setVisible(now);
            data.exclude = !now;
        }
        table.requestLayout();
    }
}

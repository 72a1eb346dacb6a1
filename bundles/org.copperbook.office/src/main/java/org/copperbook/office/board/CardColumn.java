package org.copperbook.office.board;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardRow;
import org.copperbook.store.JobStore;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** One column of the board: its name, how many jobs stand there, and a card for each. */
final class CardColumn {

    private static final int CHARS = 30;
    private static final int LINES = 4;
    private static final int GAP = 6;

    private final BoardStep step;
    private final Words words;
    private final Composite box;
    private final Label heading;
    private final Table table;
    private final BoardRows rows;
    private BoardWords said;

    CardColumn(Composite parent, BoardStep step, Words words, JobStore store, Executor background,
            Consumer<BoardRow> open, Consumer<Optional<RuntimeException>> told) {
        this.step = step;
        this.words = words;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(box);
        heading = look.as(Look.Role.STRONG, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
        table = look.as(Look.Role.TEXT,
                new Table(box, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.BORDER));
        table.setData(Desk.ID, "board/" + step.name());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        TableColumn only = new TableColumn(table, SWT.LEFT);
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max(e.height, LINES * look.lineHeight() + 2 * GAP));
        table.addListener(SWT.EraseItem, e -> e.detail &= ~SWT.FOREGROUND);
        Rows.dress(table, column -> false);
        table.addListener(SWT.PaintItem, this::paint);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Resize, e -> only.setWidth(table.getClientArea().width));
        table.addListener(SWT.DefaultSelection, e -> {
            if (e.item != null && e.item.getData() instanceof BoardRow r) {
                open.accept(r);
            }
        });
        rows = new BoardRows(store::board, background, table.getDisplay()::asyncExec, failure -> {
            if (!table.isDisposed()) {
                arrived();
                told.accept(failure);
            }
        });
    }

    /** The table of the cards. */
    Table table() {
        return table;
    }

    BoardStep step() {
        return step;
    }

    /** How wide the column wants to be, pixels. */
    int width() {
        return Look.of(table).chars(CHARS);
    }

    /** Shows the column with so many jobs, or takes it out when there are none. */
    void show(int jobs, LocalDate today) {
        said = new BoardWords(words, today, ZoneId.systemDefault());
        heading.setText(words.text("board.column", words.of(step), jobs));
        SpokenName.give(table, heading.getText());
        GridDataFactory.fillDefaults().grab(false, true).exclude(jobs == 0).hint(width(), SWT.DEFAULT).applyTo(box);
        box.setVisible(jobs > 0);
        if (jobs == 0) {
            return;
        }
        rows.query(new BoardQuery(Optional.of(step), BoardQuery.Which.ALL,
                step.owed() ? BoardQuery.Order.DUE : BoardQuery.Order.UNTOUCHED, today, 0, BoardRows.PAGE));
    }

    boolean isShown() {
        return box.getVisible();
    }

    private void arrived() {
        table.setItemCount(rows.total());
        table.clearAll();
        if (table.isFocusControl() && table.getSelectionIndex() < 0 && rows.total() > 0) {
            table.setSelection(0);
        }
        heading.setText(words.text("board.column", words.of(step), rows.total()));
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        Optional<BoardRow> row = rows.row(table.indexOf(item));
        item.setData(row.orElse(null));
        // Read out by a screen reader; what is seen is painted in lines.
        item.setText(row.map(r -> String.join(", ", said.card(r))).orElse("\u2026"));
    }

    private void paint(Event e) {
        if (!(e.item.getData() instanceof BoardRow row)) {
            return;
        }
        Look look = Look.of(table);
        Palette palette = look.palette();
        boolean chosen = table.isSelected(table.indexOf((TableItem) e.item));
        Rectangle area = ((TableItem) e.item).getBounds(0);
        List<String> lines = said.card(row);
        int y = area.y + GAP;
        for (int i = 0; i < lines.size(); i++) {
            e.gc.setFont(look.font(i == 0 ? Look.Role.STRONG : Look.Role.TEXT));
            boolean grey = row.job().voided() || i == LINES - 1 && row.waiting().isEmpty();
            e.gc.setForeground(chosen ? palette.chosenText() : i == 2 && said.late(row) ? palette.problem()
                    : grey ? palette.muted() : palette.text());
            e.gc.drawText(fitting(e, lines.get(i), area.width - 2 * GAP), area.x + GAP, y, true);
            y += look.lineHeight();
        }
        e.gc.setForeground(palette.line());
        e.gc.drawLine(area.x, y + GAP - 1, area.x + area.width, y + GAP - 1);
    }

    /** The beginning of a line that is too long for the card; the whole of it is in the list. */
    private static String fitting(Event e, String line, int width) {
        if (e.gc.textExtent(line).x <= width) {
            return line;
        }
        int end = line.length();
        while (end > 1 && e.gc.textExtent(line.substring(0, end) + "\u2026").x > width) {
            end--;
        }
        return line.substring(0, end).stripTrailing() + "\u2026";
    }
}

package org.copperbook.office.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.store.BoardRow;
import org.copperbook.store.JobStore;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

/** The board: a column for each step at which a job stands. Left and right go from column to column. */
final class ColumnsPane {

    private static final int LEAST_LINES = 12;

    private final ScrolledComposite scrolled;
    private final Composite inside;
    private final List<CardColumn> columns = new ArrayList<>();

    ColumnsPane(Composite parent, Words words, JobStore store, Executor background, Consumer<BoardRow> open,
            Consumer<Optional<RuntimeException>> told) {
        scrolled = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        inside = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(BoardStep.values().length).margins(6, 6).spacing(8, 0).applyTo(inside);
        for (BoardStep step : BoardStep.values()) {
            CardColumn column = new CardColumn(inside, step, words, store, background, open, told);
            columns.add(column);
            column.table().addListener(SWT.KeyDown, e -> key(column, e));
            column.table().addListener(SWT.FocusIn, e -> {
                scrolled.showControl(column.table().getParent());
                // One job is chosen at a time, also with the mouse.
                columns.stream().filter(c -> c != column).forEach(c -> c.table().deselectAll());
                if (column.table().getSelectionIndex() < 0 && column.table().getItemCount() > 0) {
                    column.table().setSelection(0);
                }
            });
        }
        scrolled.setContent(inside);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
    }

    ScrolledComposite control() {
        return scrolled;
    }

    /** The tables of the cards, in the order of the columns. */
    List<Table> tables() {
        return columns.stream().map(CardColumn::table).toList();
    }

    void show(Map<BoardStep, Integer> counts, LocalDate today) {
        columns.forEach(c -> c.show(counts.getOrDefault(c.step(), 0), today));
        fit();
    }

    /** Gives the columns their place, also after the size of text has changed. */
    void fit() {
        Point size = inside.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        scrolled.setMinSize(size.x, LEAST_LINES * Look.of(inside).lineHeight());
        inside.layout(true, true);
    }

    void setFocus() {
        columns.stream().filter(CardColumn::isShown).findFirst().ifPresentOrElse(c -> c.table().setFocus(),
                scrolled::setFocus);
    }

    private void key(CardColumn from, Event e) {
        int way = e.keyCode == SWT.ARROW_RIGHT ? 1 : e.keyCode == SWT.ARROW_LEFT ? -1 : 0;
        if (way == 0 || e.stateMask != 0) {
            return;
        }
        e.doit = false;
        for (int i = columns.indexOf(from) + way; i >= 0 && i < columns.size(); i += way) {
            if (columns.get(i).isShown()) {
                Table next = columns.get(i).table();
                next.setFocus();
                return;
            }
        }
    }
}

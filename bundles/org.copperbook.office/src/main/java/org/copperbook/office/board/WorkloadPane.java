package org.copperbook.office.board;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.function.BiConsumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.report.Workload;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** The hours ahead of each trade, week by week, against what it can do; and the place to say what it can do. */
final class WorkloadPane {

    static final int WEEKS = 6;

    /** Hours a week of a trade; more is a slip of the pen. */
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);
    private static final int NAME_CHARS = 18;

    private final Words words;
    private final BiConsumer<String, BigDecimal> keep;
    private final Composite box;
    private final Table table;
    private final FittedColumns fitted;
    private final Text trade;
    private final Text hours;
    private final Label said;

    /** @param keep keeps the hours a week of a trade */
    WorkloadPane(Composite parent, Words words, BiConsumer<String, BigDecimal> keep) {
        this.words = words;
        this.keep = keep;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(box);
        Label about = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        about.setText(words.text("load.about"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(about);
        table = look.as(Look.Role.TEXT, new Table(box, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL
                | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "load.table");
        SpokenName.give(table, words.text("load.name"));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(40), look.lineHeight() * 6).applyTo(table);
        for (int i = 0; i < WEEKS + 5; i++) {
            new TableColumn(table, i == 0 ? SWT.LEFT : SWT.RIGHT);
        }
        fitted = new FittedColumns(table, new int[table.getColumnCount()]);
        Rows.dress(table, column -> false);
        Composite line = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(5).spacing(8, 0).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        trade = field(line, look, "load.trade", NAME_CHARS);
        hours = field(line, look, "load.hours", NAME_CHARS / 2);
        Button set = look.as(Look.Role.TEXT, new Button(line, SWT.PUSH));
        set.setText(words.text("load.keep"));
        set.setData(Desk.ID, "load.keep");
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, "load.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        set.addListener(SWT.Selection, e -> keepTyped());
        hours.addListener(SWT.DefaultSelection, e -> keepTyped());
        trade.addListener(SWT.DefaultSelection, e -> hours.setFocus());
        table.addListener(SWT.Selection, e -> chosen());
        table.addListener(SWT.DefaultSelection, e -> {
            chosen();
            hours.setFocus();
            hours.selectAll();
        });
        Reach.ensure(line);
    }

    Composite control() {
        return box;
    }

    void show(Workload load) {
        int chosen = table.getSelectionIndex();
        Days days = Days.ofLocale();
        head(0, words.text("load.trade"));
        head(1, words.text("load.capacity"));
        head(2, words.text("load.overdue"));
        for (int i = 0; i < WEEKS; i++) {
            head(3 + i, words.text("load.week", days.day(load.monday().plusWeeks(i))));
        }
        head(3 + WEEKS, words.text("load.later"));
        head(4 + WEEKS, words.text("board.noDate"));
        table.setRedraw(false);
        table.removeAll();
        for (Workload.Line l : load.trades()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setData(l);
            item.setText(0, l.trade().isEmpty() ? words.text("load.noTrade") : l.trade());
            item.setText(1, l.capacity().map(WorkloadPane::number).orElse(words.text("load.unknown")));
            item.setText(2, number(l.overdue()));
            for (int i = 0; i < WEEKS; i++) {
                BigDecimal over = l.over(i);
                item.setText(3 + i, over.signum() == 0 ? number(l.weeks().get(i))
                        : words.text("load.over", number(l.weeks().get(i)), number(over)));
                item.setForeground(3 + i, over.signum() == 0 ? null : Look.of(table).palette().problem());
            }
            item.setText(3 + WEEKS, number(l.later()));
            item.setText(4 + WEEKS, number(l.noDate()));
        }
        table.setRedraw(true);
        fitted.fit();
        if (chosen >= 0 && chosen < table.getItemCount()) {
            table.setSelection(chosen);
        }
    }

    void fit() {
        fitted.fit();
        box.layout(true, true);
    }

    void setFocus() {
        table.setFocus();
    }

    void say(String text) {
        said.setText(text);
        box.layout(true, true);
    }

    private void keepTyped() {
        String name = trade.getText().strip();
        Typed typed = new DecimalEntry().read(hours.getText());
        if (name.isEmpty()) {
            say(words.text("load.tradeFirst"));
            trade.setFocus();
        } else if (typed instanceof Typed.Understood u && u.node().decimalValue().signum() >= 0
                && u.node().decimalValue().compareTo(MOST) <= 0) {
            keep.accept(name, u.node().decimalValue());
        } else {
            say(words.text("load.hoursFirst", hours.getText().strip()));
            hours.setFocus();
        }
    }

    private void chosen() {
        if (table.getSelectionCount() == 1 && table.getSelection()[0].getData() instanceof Workload.Line l) {
            trade.setText(l.trade());
            // Without groups: a comma between thousands could be meant for one before the decimals when it is typed.
            hours.setText(l.capacity().map(h -> h.stripTrailingZeros().toPlainString()).orElse(""));
        }
    }

    private Text field(Composite parent, Look look, String key, int chars) {
        Label label = look.as(Look.Role.TEXT, new Label(parent, SWT.NONE));
        label.setText(words.text(key));
        Text t = look.as(Look.Role.TEXT, new Text(parent, SWT.BORDER));
        t.setData(Desk.ID, key);
        SpokenName.give(t, words.text(key));
        GridDataFactory.fillDefaults().hint(look.chars(chars), SWT.DEFAULT).applyTo(t);
        return t;
    }

    private void head(int column, String text) {
        table.getColumn(column).setText(text);
    }

    private static String number(BigDecimal hours) {
        return NumberFormat.getInstance().format(hours);
    }
}

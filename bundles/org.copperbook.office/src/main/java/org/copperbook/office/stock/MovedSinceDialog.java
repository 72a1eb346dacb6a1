package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.office.AskingDialog;
import org.copperbook.store.stock.MovedSinceException.Moved;
import org.copperbook.store.stock.Stock;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Shows the rows of a list whose items were moved since it was written, and asks what counts. Nothing counts by itself. */
final class MovedSinceDialog extends AskingDialog {

    /** What is done with a row. */
    enum Choice {
        /** The row is left out. */
        LEAVE,
        /** What the list says is on hand. */
        COUNT,
        /** What the list says more or less than when it was written is put on top of what is on hand now. */
        DIFFERENCE
    }

    private static final int CHARS = 130;
    private static final int ROWS = 9;
    private static final List<String> HEADS = List.of("stock.code", "stock.what", "stock.unit", "moved.then", "moved.list",
            "moved.now", "moved.becomes", "moved.at");
    private static final List<String> FIGURES = List.of("moved.then", "moved.list", "moved.now");

    private final StockWords words;
    private final List<Stock.Listed> rows;
    private final List<Moved> moved;
    private final Consumer<List<Stock.Listed>> then;
    private final Choice[] choices;
    private Table table;
    private FittedColumns fitted;

    /**
     * @param rows  every row of the list
     * @param moved those whose items were moved
     * @param then  told the rows as they are to be taken in
     */
    MovedSinceDialog(Shell parent, StockWords words, List<Stock.Listed> rows, List<Moved> moved,
            Consumer<List<Stock.Listed>> then) {
        super(parent);
        this.words = words;
        this.rows = rows;
        this.moved = moved;
        this.then = then;
        choices = new Choice[moved.size()];
        Arrays.fill(choices, Choice.LEAVE);
        setBlockOnOpen(false);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(words.text("moved.title"));
        shell.setData(Desk.ID, "moved.window");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Look look = Look.of(parent);
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(8, 6).applyTo(area);
        Label about = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        about.setText(words.text("moved.about"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(about);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.MULTI | SWT.BORDER | SWT.V_SCROLL
                | SWT.H_SCROLL));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "moved.rows");
        SpokenName.give(table, words.text("moved.title"));
        for (String head : HEADS) {
            new TableColumn(table, FIGURES.contains(head) ? SWT.RIGHT : SWT.LEFT).setText(words.text(head));
        }
        fitted = new FittedColumns(table, new int[HEADS.size()]);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(CHARS), look.rowHeight() * ROWS).applyTo(table);
        Composite buttons = new Composite(area, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        row.spacing = 8;
        buttons.setLayout(row);
        for (Choice c : Choice.values()) {
            PushButton.in(buttons, "moved." + c.name(), words.text("moved." + c.name()), () -> choose(c));
        }
        Reach.ensure(buttons);
        moved.forEach(m -> new TableItem(table, SWT.NONE));
        show();
        table.setSelection(0);
        return area;
    }

    /** For the rows marked; all of them are with Ctrl+A. */
    private void choose(Choice choice) {
        for (int i : table.getSelectionIndices()) {
            choices[i] = choice;
        }
        show();
        table.setFocus();
    }

    private void show() {
        for (int i = 0; i < choices.length; i++) {
            Moved m = moved.get(i);
            StockItem now = m.now().item();
            table.getItem(i).setText(new String[] {now.code(), words.what(now), now.unit().sign(),
                StockWords.amount(m.row().seen().onHand()), StockWords.amount(m.row().counted()),
                StockWords.amount(now.onHand()),
                choices[i] == Choice.LEAVE ? words.text("moved.left", StockWords.amount(now.onHand(), now))
                        : StockWords.amount(becomes(m, choices[i]), now),
                m.now().at() == null ? "" : StockWords.when(m.now().at())});
        }
        fitted.fit();
    }

    private static BigDecimal becomes(Moved m, Choice choice) {
        return choice == Choice.COUNT ? m.row().counted()
                : m.now().item().onHand().add(m.row().counted().subtract(m.row().seen().onHand()));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        answers(parent, words.text("import.takeIn"), "moved/takeIn", "moved/cancel");
    }

    @Override
    protected void okPressed() {
        List<Stock.Listed> chosen = chosen();
        close();
        then.accept(chosen);
    }

    /** The rows with what was chosen. They are held against what was shown here, so that what moves again is asked again. */
    private List<Stock.Listed> chosen() {
        Map<Stock.Listed, Integer> at = new HashMap<>();
        for (int i = 0; i < moved.size(); i++) {
            at.put(moved.get(i).row(), i);
        }
        List<Stock.Listed> chosen = new ArrayList<>();
        for (Stock.Listed row : rows) {
            Integer i = at.get(row);
            if (i == null) {
                chosen.add(row);
            } else if (choices[i] != Choice.LEAVE) {
                Moved m = moved.get(i);
                chosen.add(new Stock.Listed(row.item(), becomes(m, choices[i]), m.now().seen()));
            }
        }
        return chosen;
    }
}

package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.handback.ReceivedStock;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockRules;
import org.copperbook.office.AskingDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Asks as which item, and how much, a delivery for a job goes into stock, and whether it is set aside for the job. */
public final class ReceivingDialog extends AskingDialog {

    private static final int CHARS = 80;
    private static final int ROWS = 6;
    private static final List<String> HEADS = List.of("stock.code", "stock.what", "stock.free", "stock.unit");

    private final Words words;
    private final StockWords stock;
    private final HandBack.Delivery delivery;
    private final BigDecimal proposed;
    private final List<StockItem> items;
    private final Consumer<ReceivedStock> then;
    private List<StockItem> shown = List.of();
    private Text find;
    private Table table;
    private FittedColumns fitted;
    private Text quantity;
    private Text lot;
    private Text price;
    private Button aside;
    private Label said;

    /**
     * @param proposed how much came; nothing is proposed when it is not above zero
     * @param items    what is kept in stock
     * @param then     told what is to be put in stock
     */
    public ReceivingDialog(Shell parent, Words words, HandBack.Delivery delivery, BigDecimal proposed, List<StockItem> items,
            Consumer<ReceivedStock> then) {
        super(parent);
        this.words = words;
        this.stock = new StockWords(words);
        this.delivery = delivery;
        this.proposed = proposed;
        this.items = items.stream().filter(i -> !Boolean.TRUE.equals(i.retired()))
                .sorted(Comparator.comparingInt((StockItem i) -> -fits(i, delivery)).thenComparing(StockItem::code)).toList();
        this.then = then;
        setBlockOnOpen(false);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** How many words of what was ordered an item has. */
    private static int fits(StockItem item, HandBack.Delivery delivery) {
        String of = text(item);
        int fits = 0;
        for (String word : delivery.what() == null ? new String[0] : delivery.what().toLowerCase(Locale.ROOT).split("\\s+")) {
            fits += word.length() > 1 && of.contains(word) ? 1 : 0;
        }
        return fits;
    }

    private static String text(StockItem i) {
        return String.join(" ", i.code(), i.name() == null ? "" : i.name(), i.size() == null ? "" : i.size())
                .toLowerCase(Locale.ROOT);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(words.text("receive.title", delivery.what() == null ? "" : delivery.what()));
        shell.setData(Desk.ID, "receive.window");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Look look = Look.of(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).spacing(8, 6).applyTo(area);
        Label about = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        about.setText(words.text("receive.about"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(about);
        find = text(area, look, "receive.find", "");
        find.addListener(SWT.Modify, e -> filter());
        find.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                table.setFocus();
                e.doit = false;
            }
        });
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL
                | SWT.H_SCROLL));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "receive.items");
        SpokenName.give(table, words.text("receive.items"));
        for (String head : HEADS) {
            new TableColumn(table, head.equals("stock.free") ? SWT.RIGHT : SWT.LEFT).setText(words.text(head));
        }
        fitted = new FittedColumns(table, new int[HEADS.size()]);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(look.chars(CHARS), look.rowHeight() * ROWS)
                .applyTo(table);
        quantity = text(area, look, "receive.quantity", proposed.signum() > 0 ? StockWords.typed(proposed) : "");
        lot = text(area, look, "receive.lot", "");
        price = text(area, look, "receive.price", "");
        aside = look.as(Look.Role.TEXT, new Button(area, SWT.CHECK));
        aside.setText(words.text("receive.aside"));
        aside.setData(Desk.ID, "receive.aside");
        aside.setSelection(true);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(aside);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "receive.said");
        said.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(said);
        Reach.ensure(area);
        filter();
        return area;
    }

    private Text text(Composite area, Look look, String key, String value) {
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        l.setText(words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(l);
        Text t = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER));
        t.setText(value);
        t.setData(Desk.ID, key);
        SpokenName.give(t, words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(t);
        return t;
    }

    private void filter() {
        String[] parts = find.getText().strip().toLowerCase(Locale.ROOT).split("\\s+");
        List<StockItem> fit = new ArrayList<>();
        for (StockItem i : items) {
            if (List.of(parts).stream().allMatch(text(i)::contains)) {
                fit.add(i);
            }
        }
        shown = fit;
        table.removeAll();
        for (StockItem i : shown) {
            new TableItem(table, SWT.NONE).setText(new String[] {i.code(), stock.what(i), StockWords.amount(i.free()),
                i.unit().sign()});
        }
        fitted.fit();
        // Only what surely is meant is marked by itself: the one left by searching, or the best by its name.
        boolean sure = shown.size() == 1 || shown.size() > 1 && fits(shown.get(0), delivery) > fits(shown.get(1), delivery);
        if (sure) {
            table.setSelection(0);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        answers(parent, words.text("receive.put"), "receive.put", "receive/cancel");
    }

    @Override
    protected void okPressed() {
        Optional<BigDecimal> amount = MovePane.number(quantity.getText());
        Optional<BigDecimal> cost = MovePane.number(price.getText());
        int at = table.getSelectionIndex();
        if (at < 0) {
            wrong(words.text("receive.itemFirst"), find);
            return;
        }
        StockItem item = shown.get(at);
        if (amount.filter(a -> a.signum() > 0 && a.compareTo(StockRules.MOST) <= 0).isEmpty()) {
            wrong(words.text("receive.badQuantity", quantity.getText().strip(), item.unit().sign()), quantity);
        } else if (!item.unit().counts(amount.get())) {
            wrong(words.text("stock.tooFine"), quantity);
        } else if (!price.getText().isBlank() && cost.filter(p -> p.signum() >= 0).isEmpty()) {
            wrong(words.text("stock.badPrice", price.getText().strip()), price);
        } else {
            ReceivedStock received = new ReceivedStock(UUID.randomUUID().toString(), item.code(), amount.get(), item.unit(),
                    lot.getText().isBlank() ? null : lot.getText().strip(), cost.orElse(null),
                    aside.getSelection() ? Boolean.TRUE : null, Instant.now().truncatedTo(ChronoUnit.SECONDS), null);
            close();
            then.accept(received);
        }
    }

    private void wrong(String why, Control where) {
        said.setText(why);
        getShell().layout(true, true);
        where.setFocus();
    }
}

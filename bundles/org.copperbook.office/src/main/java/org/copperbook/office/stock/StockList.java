package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.stock.StockItem;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** The items in stock: filtered as one types, sorted by a heading, summed up. */
final class StockList {

    /** Which items are listed. */
    enum Which { KEPT, WIRE, PARTS, LOW, RESERVED, RETIRED }

    private static final List<String> HEADS = List.of("stock.code", "stock.what", "stock.kind", "stock.onHand",
            "stock.reserved", "stock.free", "stock.unit", "stock.level", "stock.hint", "stock.price", "stock.value",
            "stock.place");
    private static final int FIRST_FIGURE = 3;
    private static final int LAST_FIGURE = 5;
    private static final int NARROW = 20;
    private static final int CODE_CHARS = 13;
    private static final int WHAT_CHARS = 30;

    private final StockWords words;
    private final Consumer<Optional<StockItem>> chosen;
    private final Composite box;
    private final Text find;
    private final Combo which;
    private final Label sum;
    private final Table table;
    private final FittedColumns fitted;
    private List<StockItem> all = List.of();
    private List<StockItem> shown = List.of();
    private String currency = "";
    private String wanted;

    /**
     * @param chosen told which item is marked now
     * @param enter  told when Enter is pressed on an item
     */
    StockList(Composite parent, StockWords words, Consumer<Optional<StockItem>> chosen, Runnable enter, Consumer<Table> copy) {
        this.words = words;
        this.chosen = chosen;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(box);
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        Label label = look.as(Look.Role.TEXT, new Label(top, SWT.NONE));
        label.setText(words.text("stock.find"));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        find = look.as(Look.Role.TEXT, new Text(top, SWT.BORDER));
        find.setData(Desk.ID, "stock.find");
        SpokenName.give(find, words.text("stock.find"));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(look.chars(NARROW / 2), SWT.DEFAULT)
                .applyTo(find);
        which = look.as(Look.Role.TEXT, new Combo(top, SWT.READ_ONLY));
        which.setData(Desk.ID, "stock.which");
        SpokenName.give(which, words.text("stock.which"));
        for (Which w : Which.values()) {
            which.add(words.of(w));
        }
        which.select(0);
        sum = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        sum.setData(Desk.ID, "stock.sum");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(look.chars(NARROW), SWT.DEFAULT)
                .applyTo(sum);
        table = look.as(Look.Role.TEXT, new Table(box, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL
                | SWT.H_SCROLL | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "stock.items");
        SpokenName.give(table, words.text("stock.items"));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(NARROW), look.lineHeight() * 4).applyTo(table);
        for (int i = 0; i < HEADS.size(); i++) {
            boolean figure = i >= FIRST_FIGURE && i <= LAST_FIGURE || HEADS.get(i).equals("stock.level")
                    || HEADS.get(i).equals("stock.price") || HEADS.get(i).equals("stock.value");
            TableColumn c = new TableColumn(table, figure ? SWT.RIGHT : SWT.LEFT);
            c.setText(words.text(HEADS.get(i)));
            int column = i;
            c.addListener(SWT.Selection, e -> sortBy(column));
        }
        // Long lists are measured at their beginning only; what comes later has room for usual words.
        int[] least = new int[HEADS.size()];
        least[HEADS.indexOf("stock.code")] = CODE_CHARS;
        least[HEADS.indexOf("stock.what")] = WHAT_CHARS;
        least[HEADS.indexOf("stock.place")] = CODE_CHARS;
        fitted = new FittedColumns(table, least);
        Rows.dress(table, column -> false);
        table.addListener(SWT.SetData, e -> fill((TableItem) e.item, shown.get(table.indexOf((TableItem) e.item))));
        table.addListener(SWT.Selection, e -> tell());
        table.addListener(SWT.DefaultSelection, e -> enter.run());
        table.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == 'c' && (e.stateMask & SWT.MOD1) != 0) {
                copy.accept(table);
                e.doit = false;
            }
        });
        find.addListener(SWT.Modify, e -> filter());
        find.addListener(SWT.DefaultSelection, e -> enter.run());
        find.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                table.setFocus();
                e.doit = false;
            } else if (e.keyCode == SWT.ESC) {
                find.setText("");
            }
        });
        which.addListener(SWT.Selection, e -> filter());
        Reach.ensure(top);
    }

    Composite control() {
        return box;
    }

    void show(List<StockItem> items, String shopCurrency) {
        all = items;
        currency = shopCurrency;
        filter();
    }

    /** Marks an item as soon as it is listed, whatever is filtered. */
    void mark(String code) {
        wanted = code;
        if (shown.stream().noneMatch(i -> i.code().equalsIgnoreCase(code))) {
            find.setText("");
            which.select(0);
        }
        filter();
    }

    Optional<StockItem> marked() {
        int at = table.getSelectionIndex();
        return at < 0 || at >= shown.size() ? Optional.empty() : Optional.of(shown.get(at));
    }

    List<StockItem> shown() {
        return shown;
    }

    void setFocus() {
        find.setFocus();
    }

    void fit() {
        fitted.fit();
    }

    private void filter() {
        String before = wanted != null ? wanted : marked().map(StockItem::code).orElse(null);
        String[] parts = find.getText().strip().toLowerCase(Locale.getDefault()).split("\\s+");
        List<StockItem> fit = new ArrayList<>();
        for (StockItem item : all) {
            String text = String.join(" ", item.code(), words.what(item), words.of(item.kind()),
                    item.place() == null ? "" : item.place()).toLowerCase(Locale.getDefault());
            if (belongs(item) && List.of(parts).stream().allMatch(text::contains)) {
                fit.add(item);
            }
        }
        shown = sorted(fit);
        table.setItemCount(shown.size());
        table.clearAll();
        fitted.fit();
        int at = -1;
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).code().equalsIgnoreCase(before)) {
                at = i;
            }
        }
        if (at >= 0) {
            wanted = null;
        }
        if (!shown.isEmpty()) {
            table.setSelection(Math.max(0, at));
        }
        BigDecimal value = shown.stream().flatMap(i -> i.value().stream()).reduce(BigDecimal.ZERO, BigDecimal::add);
        long low = shown.stream().filter(StockItem::isLow).count();
        sum.setText(words.text("stock.sum", shown.size(), low, StockWords.money(value, currency), currency));
        box.layout(true, true);
        tell();
    }

    private boolean belongs(StockItem item) {
        boolean retired = Boolean.TRUE.equals(item.retired());
        return switch (Which.values()[Math.max(0, which.getSelectionIndex())]) {
            case KEPT -> !retired || item.onHand().signum() > 0;
            case WIRE -> !retired && item.kind() == StockItem.Kind.WIRE;
            case PARTS -> !retired && item.kind() != StockItem.Kind.WIRE;
            case LOW -> StockWords.isWarning(item);
            case RESERVED -> !item.reserved().isEmpty();
            case RETIRED -> retired;
        };
    }

    private void sortBy(int column) {
        TableColumn c = table.getColumn(column);
        boolean turn = table.getSortColumn() == c && table.getSortDirection() == SWT.UP;
        table.setSortColumn(c);
        table.setSortDirection(turn ? SWT.DOWN : SWT.UP);
        filter();
    }

    private List<StockItem> sorted(List<StockItem> items) {
        TableColumn by = table.getSortColumn();
        if (by == null) {
            return List.copyOf(items);
        }
        Comparator<StockItem> order = order(HEADS.get(table.indexOf(by)));
        return items.stream().sorted(table.getSortDirection() == SWT.UP ? order : order.reversed()).toList();
    }

    private Comparator<StockItem> order(String head) {
        Comparator<BigDecimal> emptyFirst = Comparator.nullsFirst(Comparator.naturalOrder());
        return switch (head) {
            case "stock.onHand" -> Comparator.comparing(StockItem::onHand);
            case "stock.reserved" -> Comparator.comparing(StockItem::reservedInAll);
            case "stock.free" -> Comparator.comparing(StockItem::free);
            case "stock.level" -> Comparator.comparing(StockItem::reorderLevel, emptyFirst);
            case "stock.price" -> Comparator.comparing(StockItem::price, emptyFirst);
            case "stock.value" -> Comparator.comparing(i -> i.value().orElse(null), emptyFirst);
            default -> {
                int column = HEADS.indexOf(head);
                yield Comparator.comparing(i -> texts(i)[column], String.CASE_INSENSITIVE_ORDER);
            }
        };
    }

    private void fill(TableItem row, StockItem item) {
        row.setText(texts(item));
        boolean warning = StockWords.isWarning(item);
        Look look = Look.of(table);
        row.setForeground(HEADS.indexOf("stock.hint"), warning ? look.palette().problem() : null);
        row.setFont(HEADS.indexOf("stock.hint"), warning ? look.font(Look.Role.STRONG) : null);
    }

    private String[] texts(StockItem item) {
        return new String[] {item.code(), words.what(item), words.of(item.kind()), StockWords.amount(item.onHand()),
            item.reserved().isEmpty() ? "" : StockWords.amount(item.reservedInAll()), StockWords.amount(item.free()),
            item.unit().sign(), StockWords.amount(item.reorderLevel()), words.hint(item),
            StockWords.price(item.price(), currency), item.value().map(v -> StockWords.money(v, currency)).orElse(""),
            item.place() == null ? "" : item.place()};
    }

    private void tell() {
        chosen.accept(marked());
    }
}

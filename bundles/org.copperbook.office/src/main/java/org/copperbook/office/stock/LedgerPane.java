package org.copperbook.office.stock;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.store.stock.StockEntry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** What became of an item: its movements, the newest first. */
final class LedgerPane {

    static final List<String> HEADS = List.of("stock.when", "stock.who", "stock.did", "stock.quantity", "stock.job",
            "stock.after", "stock.reservedAfter", "stock.lot", "stock.note");
    private static final List<String> FIGURES = List.of("stock.quantity", "stock.after", "stock.reservedAfter");

    private static final int NOTE_CHARS = 34;

    private final StockWords words;
    private final Table table;
    private final FittedColumns fitted;
    private List<StockEntry> entries = List.of();

    LedgerPane(Composite parent, StockWords words, Consumer<Table> copy) {
        this.words = words;
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL
                | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "stock.ledger");
        SpokenName.give(table, words.text("stock.ledger"));
        for (String head : HEADS) {
            new TableColumn(table, FIGURES.contains(head) ? SWT.RIGHT : SWT.LEFT).setText(words.text(head));
        }
        int[] least = new int[HEADS.size()];
        least[HEADS.indexOf("stock.note")] = NOTE_CHARS;
        fitted = new FittedColumns(table, least);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(look.wrapping(), look.lineHeight() * 3).applyTo(table);
        table.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == 'c' && (e.stateMask & SWT.MOD1) != 0) {
                copy.accept(table);
                e.doit = false;
            }
        });
    }

    /**
     * @param numbers number of each job by its key
     * @param names   the name of a person by key
     */
    void show(List<StockEntry> ledger, Map<String, String> numbers, UnaryOperator<String> names) {
        entries = ledger;
        table.setRedraw(false);
        table.removeAll();
        for (StockEntry e : ledger) {
            TableItem row = new TableItem(table, SWT.NONE);
            row.setText(texts(words, e, numbers, names));
        }
        table.setRedraw(true);
        fitted.fit();
    }

    static String[] texts(StockWords words, StockEntry e, Map<String, String> numbers, UnaryOperator<String> names) {
        StockMovement m = e.movement();
        String did = m.undoes() != null ? words.text("stock.reverse", words.of(m.kind()))
                : m.list() != null ? words.text("stock.byList", words.of(m.kind())) : words.of(m.kind());
        return new String[] {StockWords.when(e.at()), names.apply(e.who()),
            e.undone() ? words.text("stock.undone", did) : did, StockWords.amount(m.quantity(), e.item()),
            m.job() == null ? "" : numbers.getOrDefault(m.job(), m.job()), StockWords.amount(e.item().onHand()),
            StockWords.amount(e.item().reservedInAll()), m.lot() == null ? "" : m.lot(), m.note() == null ? "" : m.note()};
    }

    /**
     * The movement marked; where none is, the newest that still counts, so that taking back again and again goes back through
     * them and not to and fro.
     */
    Optional<StockEntry> marked() {
        int at = table.getSelectionIndex();
        return at >= 0 && at < entries.size() ? Optional.of(entries.get(at))
                : entries.stream().filter(e -> !e.undone() && e.movement().undoes() == null).findFirst();
    }

    List<StockEntry> entries() {
        return entries;
    }

    void fit() {
        fitted.fit();
    }
}

package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A list of entries that is filtered as somebody types, of which one is chosen; Ctrl+C copies it. Virtual: thousands are no burden. */
final class ChosenList {

    private static final int LINES = 7;
    private static final int NARROW = 20;

    /**
     * An entry.
     *
     * @param key     what tells it from others
     * @param cells   its texts, one a column
     * @param search  further text by which it is found
     * @param warning whether its last text is a warning
     */
    record Entry(String key, List<String> cells, String search, boolean warning) {

        String all() {
            return String.join(" ", cells) + " " + search;
        }
    }

    private final FilterField filter;
    private final Table table;
    private final FittedColumns widths;
    private final String[] heads;
    private final Words words;
    private final Consumer<String> chosen;
    private List<Entry> all = List.of();
    private List<Entry> shown = List.of();
    private String key = "";

    /**
     * @param id     how the names of its controls begin
     * @param heads  keys of the headings
     * @param chosen told the key of the entry chosen, an empty text for none
     */
    ChosenList(Composite parent, Words words, String id, String[] heads, Consumer<String> chosen) {
        this.words = words;
        this.heads = heads.clone();
        this.chosen = chosen;
        Look look = Look.of(parent);
        filter = new FilterField(parent, words, id + ".filter", this::refilter, this::focus);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.VIRTUAL));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, id + ".list");
        SpokenName.give(table, words.text(id + ".title"));
        for (String head : heads) {
            new TableColumn(table, SWT.LEFT).setText(words.text(head));
        }
        widths = new FittedColumns(table, new int[heads.length]);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(NARROW), look.rowHeight() * LINES).applyTo(table);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Selection, e -> choose(table.getSelectionIndex()));
        table.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == 'c' && (e.stateMask & SWT.MOD1) != 0) {
                block().toClipboard(table.getDisplay());
                e.doit = false;
            }
        });
    }

    /** Shows entries; the one that was chosen stays chosen while it is among them. */
    void show(List<Entry> entries) {
        all = List.copyOf(entries);
        refilter();
    }

    /** Chooses an entry, whatever is filtered. */
    void choose(String wanted) {
        if (shown.stream().noneMatch(e -> e.key().equals(wanted)) ) {
            filter.empty();
        }
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).key().equals(wanted)) {
                table.setSelection(i);
                choose(i);
                return;
            }
        }
    }

    String chosen() {
        return key;
    }

    void focus() {
        table.setFocus();
        if (table.getSelectionIndex() < 0 && !shown.isEmpty()) {
            table.setSelection(0);
            choose(0);
        }
    }

    void fit() {
        widths.fit();
    }

    /** The list takes all the height that there is. */
    void fill() {
        ((GridData) table.getLayoutData()).grabExcessVerticalSpace = true;
        ((GridData) table.getLayoutData()).verticalAlignment = SWT.FILL;
    }

    private void refilter() {
        FilterField.Wanted wanted = filter.wanted();
        List<Entry> next = new ArrayList<>();
        for (Entry e : all) {
            if (wanted.in(e.all())) {
                next.add(e);
            }
        }
        shown = next;
        table.setItemCount(shown.size());
        table.clearAll();
        int at = -1;
        for (int i = 0; i < shown.size(); i++) {
            at = shown.get(i).key().equals(key) ? i : at;
        }
        if (at >= 0) {
            table.setSelection(at);
        } else {
            table.deselectAll();
        }
        widths.fit();
    }

    private void fill(Event e) {
        if (e.index < shown.size()) {
            Entry entry = shown.get(e.index);
            TableItem item = (TableItem) e.item;
            item.setText(entry.cells().toArray(String[]::new));
            Look look = Look.of(table);
            item.setForeground(heads.length - 1, entry.warning() ? look.palette().problem() : null);
            item.setFont(heads.length - 1, entry.warning() ? look.font(Look.Role.STRONG) : null);
        }
    }

    private void choose(int index) {
        String next = index < 0 || index >= shown.size() ? "" : shown.get(index).key();
        if (!next.equals(key)) {
            key = next;
            chosen.accept(next);
        }
    }

    /** What is shown, headings first. */
    CopiedBlock block() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(Arrays.stream(heads).map(words::text).toList());
        shown.forEach(e -> rows.add(e.cells()));
        return new CopiedBlock(rows);
    }
}

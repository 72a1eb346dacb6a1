package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;

/**
 * A register by trade that is one part of the shop: grids that are filtered as somebody types.
 *
 * @param <T> its record
 */
abstract class TradesPane<T extends Part> extends RegisterPane {

    private static final String TRADE = "trade";

    private final PartKey key;
    private final T beginning;
    private final String list;
    private final FilterField filter;
    private final List<RecordGrid> grids = new ArrayList<>();
    private Form form;
    private FilterField.Wanted wanted;
    private Set<JsonNode> atFiltering = Set.of();

    /**
     * @param beginning the record as long as the store has none
     * @param list      name of the list of trades in it
     */
    TradesPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name, PartKey key, T beginning,
            String list) {
        super(parent, editing, session, words, name);
        this.key = key;
        this.beginning = beginning;
        this.list = list;
        commonButtons();
        filter = new FilterField(body(), words, id("filter"), this::refilter, () -> grids.get(0).table().setFocus());
        wanted = filter.wanted();
        rebuild();
        editing.open(key, beginning, this::changed);
    }

    abstract void build(Form here);

    /** Puts a row of a table into one of the list, which may be new. */
    abstract void put(ObjectNode one, RegisterRow row);

    /** Whether a row of the list, which is of the same trade, is the one that a row of a table means. */
    abstract boolean same(JsonNode one, RegisterRow row);

    /** The record as it stands on the screen. */
    final T now() {
        @SuppressWarnings("unchecked")
        Class<T> type = (Class<T>) beginning.getClass();
        return editing().document().part(key, type).orElse(beginning);
    }

    /** Adds a grid to the form that is filtered. */
    final void grid(Form here, String title, String pointer, Consumer<GridColumns> columns, Supplier<ObjectNode> begin) {
        grids.add(here.grid(title, pointer, columns).newRow(begin).where(this::shows));
    }

    final ObjectNode emptyRow() {
        return session().json().mapper().createObjectNode();
    }

    /** The first column in tables. */
    final RegisterField tradeField() {
        return RegisterField.text(TRADE, words().text("rates.trade"), words().text("rates.tradeTitles")).needed();
    }

    /** What was typed since the filter stays in sight, whether it has the words or not. */
    private boolean shows(JsonNode row) {
        return filter.isEmpty() || !atFiltering.contains(row) || wanted.in(StreamSupport.stream(row.spliterator(), false)
                .map(JsonNode::asText).collect(Collectors.joining(" ")));
    }

    private void refilter() {
        wanted = filter.wanted();
        Set<JsonNode> rows = new HashSet<>();
        for (RecordGrid g : grids) {
            editing().document().rows(key, g.list()).forEach(rows::add);
        }
        atFiltering = rows;
        grids.forEach(g -> g.where(this::shows));
    }

    private void rebuild() {
        if (form != null) {
            form.control().dispose();
            grids.clear();
        }
        form = new Form(body(), editing().site(key), words());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
        build(form);
        form.refresh();
        body().layout(true, true);
    }

    @Override
    final boolean owns(PartKey other) {
        return key.equals(other);
    }

    @Override
    final Optional<PartKey> key() {
        return Optional.of(key);
    }

    @Override
    final void changed() {
        form.refresh();
    }

    @Override
    final void setFocus() {
        form.focusFirst();
    }

    @Override
    final void resized() {
        rebuild();
    }

    @Override
    final CopiedBlock block() {
        return grids.get(0).model().copyAll();
    }

    @Override
    final void importTable() {
        new ImportWindow<RegisterRow>(control().getShell(), words(), title(), shape(), row -> row, rows -> {
            Optional<String> problem = editing().document().change(key, "", tree -> with(tree, rows));
            say(problem.orElseGet(() -> words().text("import.putIn", rows.size())));
        }).open();
    }

    /** The tree with the rows of a table put in: each in place of the one that it means, or at the end. */
    private ObjectNode with(ObjectNode tree, List<RegisterRow> rows) {
        ArrayNode all = tree.withArray(list);
        for (RegisterRow r : rows) {
            String trade = r.text(TRADE).orElseThrow();
            put(row(all, o -> o.path(TRADE).asText("").strip().equalsIgnoreCase(trade) && same(o, r)).put(TRADE, trade), r);
        }
        return tree;
    }
}

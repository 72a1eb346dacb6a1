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
import java.util.function.Predicate;
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
import org.copperbook.sheets.registers.RegisterImport;
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
    private final FilterField filter;
    private final List<RecordGrid> grids = new ArrayList<>();
    private Form form;
    private FilterField.Wanted wanted;
    private Set<JsonNode> atFiltering = Set.of();

    /**
     * @param beginning the record as long as the store has none
     */
    TradesPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name, PartKey key, T beginning) {
        super(parent, editing, session, words, name);
        this.key = key;
        this.beginning = beginning;
        commonButtons();
        filter = new FilterField(body(), words, id("filter"), this::refilter, () -> grids.get(0).table().setFocus());
        wanted = filter.wanted();
        rebuild();
        editing.open(key, beginning, this::changed);
    }

    abstract void build(Form here);

    /** Puts a row of a table into the record: in place of the entry that it means, or as a new one. */
    abstract void put(ObjectNode tree, RegisterRow row);

    /** What refuses a row of a table. A new one for each table. */
    RegisterImport.Maker<RegisterRow> checked() {
        return row -> row;
    }

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
        return RegisterField.text(TRADE, words().text("rates.trade"), words().text("rates.tradeTitles"));
    }

    /** The entry of a list that is of the trade of a row and means the same, or a new one at its end. */
    static ObjectNode entry(ArrayNode list, RegisterRow row, Predicate<JsonNode> same) {
        String trade = row.text(TRADE).orElse("").strip();
        ObjectNode one = row(list, o -> o.path(TRADE).asText("").strip().equalsIgnoreCase(trade) && same.test(o));
        return trade.isEmpty() ? one : one.put(TRADE, trade);
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
        new ImportWindow<RegisterRow>(control().getShell(), words(), title(), shape(), checked(), rows -> {
            Optional<String> problem = editing().document().change(key, "", tree -> {
                rows.forEach(r -> put(tree, r));
                return tree;
            });
            say(problem.orElseGet(() -> words().text("import.putIn", rows.size())));
        }).open();
    }
}

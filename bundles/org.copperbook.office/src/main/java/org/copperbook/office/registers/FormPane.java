package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.sheets.registers.RegisterRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;

/** A register that is one part of the shop, shown as a form with grids. */
abstract class FormPane extends RegisterPane {

    private final PartKey key;
    private Form form;

    FormPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name, PartKey key,
            Part beginning) {
        super(parent, editing, session, words, name);
        this.key = key;
        commonButtons();
        rebuild();
        editing.open(key, beginning, this::changed);
    }

    abstract void build(Form here);

    /** The tree with the rows of a table put in. */
    abstract ObjectNode with(ObjectNode tree, List<RegisterRow> rows);

    private void rebuild() {
        if (form != null) {
            form.control().dispose();
        }
        form = new Form(body(), editing().site(key), words());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
        build(form);
        form.refresh();
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
    final void importTable() {
        new ImportWindow<RegisterRow>(control().getShell(), words(), title(), shape(), row -> row, rows -> {
            Optional<String> problem = editing().document().change(key, "", tree -> with(tree, rows));
            say(problem.orElseGet(() -> words().text("import.putIn", rows.size())));
        }).open();
    }

    /** The row of a list that is meant, or a new one at its end. */
    static ObjectNode row(ArrayNode list, Predicate<JsonNode> meant) {
        for (JsonNode row : list) {
            if (meant.test(row)) {
                return (ObjectNode) row;
            }
        }
        return list.addObject();
    }
}

package org.copperbook.desk.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A list of words in the record, each ticked or not (hazards). The record keeps them in the order they are offered. */
final class ChecksField implements FormField {

    private final FieldRow row;
    private final JobDocument document;
    private final PartKey key;
    private final String pointer;
    private final Map<JsonNode, Button> buttons = new LinkedHashMap<>();

    ChecksField(FieldRow row, JobDocument document, PartKey key, String pointer, Map<JsonNode, String> options) {
        this.row = row;
        this.document = document;
        this.key = key;
        this.pointer = pointer;
        Look look = Look.of(row.frame());
        Composite group = new Composite(row.frame(), SWT.NONE);
        group.setLayout(new WordsInRows());
        options.forEach((node, label) -> {
            Button b = look.as(Look.Role.TEXT, new Button(group, SWT.CHECK | SWT.WRAP));
            b.setText(label);
            b.setData(Desk.ID, pointer + "/" + node.asText());
            b.addListener(SWT.Selection, e -> write());
            b.addListener(SWT.Traverse, e -> {
                if (e.detail == SWT.TRAVERSE_RETURN) {
                    e.doit = false;
                    b.traverse(SWT.TRAVERSE_TAB_NEXT);
                }
            });
            buttons.put(node, b);
        });
        row.holds(group, pointer, SWT.DEFAULT, true);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(group);
    }

    private void write() {
        ArrayNode ticked = JsonNodeFactory.instance.arrayNode();
        buttons.forEach((node, b) -> {
            if (b.getSelection()) {
                ticked.add(node);
            }
        });
        document.closeStep(key);
        document.set(key, pointer, ticked.isEmpty() ? null : ticked)
                .ifPresent(problem -> row.say(new Note.Problem(problem), a -> { }));
        document.closeStep(key);
    }

    @Override
    public String label() {
        return row.label();
    }

    @Override
    public String pointer() {
        return pointer;
    }

    @Override
    public void refresh() {
        JsonNode now = document.value(key, pointer);
        buttons.forEach((node, b) -> {
            boolean in = false;
            for (JsonNode n : now) {
                in |= n.equals(node);
            }
            if (!b.isDisposed() && b.getSelection() != in) {
                b.setSelection(in);
            }
        });
    }

    @Override
    public void show(List<Verdict> here) {
        row.show(here);
    }

    @Override
    public void enable(boolean enabled) {
        buttons.values().forEach(b -> b.setEnabled(enabled));
    }

    @Override
    public void focus() {
        buttons.values().stream().findFirst().ifPresent(Button::setFocus);
    }
}

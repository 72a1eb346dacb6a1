package org.copperbook.desk.form;

import java.util.List;
import java.util.function.Supplier;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.swt.widgets.Text;

/** A figure that is computed and cannot be typed over; it can be selected and copied. */
final class ComputedField implements FormField {

    private final FieldRow row;
    private final Text text;
    private final Supplier<String> value;
    private final String id;

    ComputedField(FieldRow row, String id, Supplier<String> value) {
        this.row = row;
        this.id = id;
        this.value = value;
        this.text = SaidText.in(row.frame());
        row.says(text, id);
    }

    @Override
    public String label() {
        return row.label();
    }

    @Override
    public String pointer() {
        return id;
    }

    @Override
    public void refresh() {
        String now = value.get();
        if (!text.isDisposed() && !text.getText().equals(now == null ? "" : now)) {
            text.setText(now == null ? "" : now);
            row.grown();
        }
    }

    @Override
    public void show(List<Verdict> here) {
        row.show(here);
    }

    @Override
    public void enable(boolean enabled) {
        // It is never typed into.
    }

    @Override
    public void focus() {
        text.setFocus();
    }
}

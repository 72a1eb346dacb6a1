package org.copperbook.desk.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * A field that is typed into: a line, several lines, or a line with a list to choose from. Enter commits and moves on,
 * Esc restores, F1 explains.
 */
final class TypedField implements FormField {

    /** Shapes of the control. */
    enum Shape { LINE, LINES, LIST }

    private static final int LINES_SHOWN = 2;

    private final FieldRow row;
    private final FieldBinding binding;
    private final Control control;
    private final Supplier<String> help;
    private final boolean number;
    private boolean showing;
    private boolean justEntered;

    TypedField(FieldRow row, Shape shape, JobDocument document, PartKey key, String pointer, Entry entry, int chars,
            Supplier<String> help) {
        this.row = row;
        this.help = help;
        this.number = shape == Shape.LINE && entry.isNumeric();
        Look look = Look.of(row.frame());
        this.control = look.as(Look.Role.TEXT, switch (shape) {
            case LINE -> new Text(row.frame(), SWT.BORDER | (entry.isNumeric() ? SWT.RIGHT : SWT.LEFT));
            case LINES -> new Text(row.frame(), SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
            case LIST -> new Combo(row.frame(), SWT.DROP_DOWN);
        });
        this.binding = new FieldBinding(document, key, pointer, entry, new FieldBinding.View() {
            @Override
            public String text() {
                return TypedField.this.text();
            }

            @Override
            public void show(String text) {
                TypedField.this.write(text);
            }

            @Override
            public void say(Note note) {
                row.say(note, TypedField.this::answered);
            }

            @Override
            public void quiet() {
                row.quiet();
            }
        });
        row.holds(control, pointer, chars > 0 ? look.chars(chars) : SWT.DEFAULT, chars <= 0);
        if (shape == Shape.LINES) {
            GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, LINES_SHOWN * look.rowHeight())
                    .applyTo(control);
        }
        listen(shape, entry);
    }

    /** Names a field that is emptied when a value is put here. */
    TypedField inPlaceOf(String pointerOfOther) {
        binding.inPlaceOf(pointerOfOther);
        return this;
    }

    /** Names a field that holds only as long as nothing else is typed here. */
    TypedField takesOff(String pointerOfHanging) {
        binding.takesOff(pointerOfHanging);
        return this;
    }

    /** Names a field that is filled where it is empty when something is put here. */
    TypedField fills(String pointerOfHanging, Supplier<JsonNode> value) {
        binding.fills(pointerOfHanging, value);
        return this;
    }

    /** Lets the arrow downwards go to what is offered for the text typed here; false when nothing is. */
    TypedField offers(BooleanSupplier goThere) {
        control.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN && (e.stateMask & SWT.MODIFIER_MASK) == 0 && goThere.getAsBoolean()) {
                e.doit = false;
            }
        });
        return this;
    }

    private void listen(Shape shape, Entry entry) {
        control.addListener(SWT.FocusIn, e -> {
            fillList(entry);
            binding.enter();
            selectAll(shape);
            justEntered = true;
        });
        control.addListener(SWT.MouseUp, e -> {
            // The press that gives the focus also sets the caret; what is typed next shall still replace the text.
            if (justEntered && control instanceof Text t && t.getSelectionCount() == 0) {
                selectAll(shape);
            }
            justEntered = false;
        });
        control.addListener(SWT.KeyDown, e -> justEntered = false);
        control.addListener(SWT.FocusOut, e -> {
            binding.commit();
            makeRoom();
        });
        control.addListener(SWT.Modify, e -> {
            if (!showing) {
                binding.typed();
            }
        });
        control.addListener(SWT.Traverse, e -> traverse(e, shape));
        control.addListener(SWT.Help, e -> {
            String words = help.get();
            if (words != null) {
                row.say(new Note.Explained(words), this::answered);
            }
        });
    }

    private void traverse(Event e, Shape shape) {
        switch (e.detail) {
            case SWT.TRAVERSE_RETURN -> {
                if (shape == Shape.LINES) {
                    return;
                }
                e.doit = false;
                boolean good = binding.commit();
                if (good || !row.focusAnswer()) {
                    control.traverse(SWT.TRAVERSE_TAB_NEXT);
                }
            }
            case SWT.TRAVERSE_ESCAPE -> {
                e.doit = false;
                binding.restore();
                selectAll(shape);
            }
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> e.doit = true;
            default -> {
            }
        }
    }

    private void answered(org.copperbook.desk.entry.Typed.Understood answer) {
        binding.answer(answer);
        if (!control.isDisposed()) {
            control.setFocus();
            control.traverse(SWT.TRAVERSE_TAB_NEXT);
        }
    }

    private void fillList(Entry entry) {
        if (control instanceof Combo combo) {
            List<String> choices = entry.choices();
            if (!choices.equals(List.of(combo.getItems()))) {
                String text = combo.getText();
                showing = true;
                try {
                    combo.setItems(choices.toArray(String[]::new));
                    combo.setText(text);
                } finally {
                    showing = false;
                }
            }
        }
    }

    private void selectAll(Shape shape) {
        if (shape == Shape.LINE) {
            ((Text) control).selectAll();
        } else if (control instanceof Combo combo) {
            combo.setSelection(new org.eclipse.swt.graphics.Point(0, combo.getText().length()));
        }
    }

    private String text() {
        return control instanceof Text t ? t.getText() : ((Combo) control).getText();
    }

    private void write(String text) {
        showing = true;
        try {
            if (control instanceof Text t) {
                t.setText(text);
            } else {
                ((Combo) control).setText(text);
            }
        } finally {
            showing = false;
        }
        makeRoom();
    }

    /** Also for what is shown just as it was typed. */
    private void makeRoom() {
        if (number && !control.isDisposed()) {
            row.roomFor(control);
        }
    }

    @Override
    public String label() {
        return row.label();
    }

    @Override
    public String pointer() {
        return binding.pointer();
    }

    @Override
    public void refresh() {
        if (!control.isDisposed()) {
            binding.refresh();
        }
    }

    @Override
    public void show(List<Verdict> here) {
        row.show(here);
    }

    @Override
    public void enable(boolean enabled) {
        if (control instanceof Text t) {
            t.setEditable(enabled);
            t.setBackground(enabled ? null : t.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
        } else {
            control.setEnabled(enabled);
        }
    }

    @Override
    public void focus() {
        control.setFocus();
    }
}

package org.copperbook.office.registers;

import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.cards.HeaderGuess;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Words by which entries are found as somebody types; the arrow down goes on to the entries. */
final class FilterField {

    private final Text text;

    /**
     * @param id      name of the field for tests and screen readers
     * @param changed told of every letter
     * @param down    goes to the entries
     */
    FilterField(Composite parent, Words words, String id, Runnable changed, Runnable down) {
        Look look = Look.of(parent);
        // A line of its own, so that at bench size it can be as high as a glove needs.
        Composite line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        text = look.as(Look.Role.TEXT, new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
        text.setMessage(words.text("registers.filter"));
        text.setData(Desk.ID, id);
        SpokenName.give(text, words.text("registers.filter"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addListener(SWT.Modify, e -> changed.run());
        text.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                down.run();
                e.doit = false;
            } else if (e.keyCode == SWT.ESC) {
                text.setText("");
                e.doit = false;
            }
        });
    }

    boolean isEmpty() {
        return text.getText().isBlank();
    }

    void empty() {
        if (!text.getText().isEmpty()) {
            text.setText("");
        }
    }

    /** What is typed now, as a question that can be asked of many entries. */
    Wanted wanted() {
        return new Wanted(List.of(HeaderGuess.folded(text.getText()).split(" ")));
    }

    /** @param words every one of them must be in an entry, in any case and accent */
    record Wanted(List<String> words) {

        boolean in(String entry) {
            String folded = HeaderGuess.folded(entry);
            return words.stream().allMatch(folded::contains);
        }
    }
}

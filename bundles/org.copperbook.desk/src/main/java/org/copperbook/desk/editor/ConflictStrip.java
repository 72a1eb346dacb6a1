package org.copperbook.desk.editor;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Conflict;
import org.copperbook.desk.document.FieldDifference;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Two copies of a part side by side, field by field; the person chooses, and what only one side changed is chosen. */
final class ConflictStrip {

    private static final List<String> COUNTED = List.of("/counts", "/groups", "/turnsPerCoil", "/wire");

    private final Strip strip;
    private final Map<FieldDifference, Button> theirs = new LinkedHashMap<>();
    private final boolean covered;
    private final PartKey key;
    private final DifferenceWords words;

    /**
     * @param partLabel name of the part
     * @param whoName   name of the other person
     * @param words     how the differences are told
     * @param settled   told the pointers of the fields to take over
     */
    ConflictStrip(Composite parent, Conflict conflict, String partLabel, String whoName,
            DifferenceWords words, Consumer<Set<String>> settled) {
        key = conflict.key();
        this.words = words;
        strip = new Strip(parent, "conflict/" + conflict.key(), true);
        String when = Days.ofLocale().moment(conflict.savedAt());
        strip.text(DeskWords.text("conflict.said", partLabel, whoName, when));
        strip.button("conflict/settle", DeskWords.text("conflict.settle"), () -> settled.accept(chosen()));
        Composite area = strip.area();
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 4).applyTo(area);
        label(area, DeskWords.text("conflict.field"), Look.Role.STRONG);
        Composite sides = pair(area);
        for (String side : List.of(DeskWords.text("conflict.mine"), DeskWords.text("conflict.theirs", whoName))) {
            GridDataFactory.fillDefaults().grab(true, false).applyTo(label(sides, side, Look.Role.STRONG));
        }
        covered = conflict.theirs() instanceof WindingData w && !w.asWound() && !w.counts().isEmpty();
        for (FieldDifference d : conflict.differences()) {
            row(area, d);
        }
    }

    void dispose() {
        strip.dispose();
    }

    private void row(Composite area, FieldDifference d) {
        label(area, d.pointer().isEmpty() ? DeskWords.text("conflict.all") : words.place(key, d), Look.Role.TEXT)
                .setData(Desk.ID, "conflict" + d.pointer() + "#place");
        Composite pair = pair(area);
        Button mine = radio(pair, d, "#mine", d.mine());
        Button their = radio(pair, d, "#theirs", d.theirs());
        boolean takeTheirs = d.onlyTheirs() && !d.onlyMine();
        mine.setSelection(!takeTheirs);
        their.setSelection(takeTheirs);
        theirs.put(d, their);
    }

    /** Turns and strands of a winding that is being counted twice are not told here: the counts stay blind. */
    private boolean tellsACount(String pointer) {
        return covered && COUNTED.stream().anyMatch(p -> pointer.isEmpty() || pointer.startsWith(p));
    }

    private Button radio(Composite parent, FieldDifference d, String side, JsonNode value) {
        Button b = Look.of(parent).as(Look.Role.TEXT, new Button(parent, SWT.RADIO));
        // A single & would be taken for the mark of a key.
        b.setText((tellsACount(d.pointer()) ? DeskWords.text("conflict.covered") : words.value(key, d, value))
                .replace("&", "&&"));
        b.setData(Desk.ID, "conflict" + d.pointer() + side);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(b);
        return b;
    }

    /** The two copies side by side, each half as wide; the headings stand in such a pair too, and so above the copies. */
    private static Composite pair(Composite area) {
        Composite pair = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).applyTo(pair);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(pair);
        return pair;
    }

    private static Label label(Composite parent, String words, Look.Role role) {
        Label l = Look.of(parent).as(role, new Label(parent, SWT.NONE));
        l.setText(words);
        return l;
    }

    private Set<String> chosen() {
        Set<String> pointers = new TreeSet<>();
        theirs.forEach((d, b) -> {
            if (b.getSelection()) {
                pointers.add(d.pointer());
            }
        });
        return pointers;
    }
}

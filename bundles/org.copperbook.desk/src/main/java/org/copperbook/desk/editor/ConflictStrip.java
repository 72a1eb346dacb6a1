package org.copperbook.desk.editor;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Conflict;
import org.copperbook.desk.document.FieldDifference;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
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

    /**
     * @param partLabel name of the part
     * @param whoName   name of the other person
     * @param settled   told the pointers of the fields to take over
     */
    ConflictStrip(Composite parent, Conflict conflict, String partLabel, String whoName,
            Consumer<Set<String>> settled) {
        strip = new Strip(parent, "conflict/" + conflict.key(), true);
        String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.SHORT).withZone(ZoneId.systemDefault())
                .format(conflict.savedAt());
        strip.text(DeskWords.text("conflict.said", partLabel, whoName, when));
        strip.button("conflict/settle", DeskWords.text("conflict.settle"), () -> settled.accept(chosen()));
        Composite area = strip.area();
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(12, 4).applyTo(area);
        label(area, DeskWords.text("conflict.field"), Look.Role.STRONG);
        label(area, DeskWords.text("conflict.mine"), Look.Role.STRONG);
        label(area, DeskWords.text("conflict.theirs", whoName), Look.Role.STRONG);
        covered = conflict.theirs() instanceof WindingData w && !w.asWound() && !w.counts().isEmpty();
        for (FieldDifference d : conflict.differences()) {
            row(area, d);
        }
    }

    void dispose() {
        strip.dispose();
    }

    private void row(Composite area, FieldDifference d) {
        label(area, d.pointer().isEmpty() ? "/" : d.pointer(), Look.Role.TEXT);
        Composite pair = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).applyTo(pair);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(pair);
        Button mine = radio(pair, d.pointer(), "#mine", d.mine());
        Button their = radio(pair, d.pointer(), "#theirs", d.theirs());
        boolean takeTheirs = d.onlyTheirs() && !d.onlyMine();
        mine.setSelection(!takeTheirs);
        their.setSelection(takeTheirs);
        theirs.put(d, their);
    }

    /** Turns and strands of a winding that is being counted twice are not told here: the counts stay blind. */
    private boolean tellsACount(String pointer) {
        return covered && COUNTED.stream().anyMatch(p -> pointer.isEmpty() || pointer.startsWith(p));
    }

    private Button radio(Composite parent, String pointer, String side, JsonNode value) {
        String id = pointer + side;
        Button b = Look.of(parent).as(Look.Role.TEXT, new Button(parent, SWT.RADIO));
        b.setText(tellsACount(pointer) ? DeskWords.text("conflict.covered") : shown(value));
        b.setData(Desk.ID, "conflict" + id);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(b);
        return b;
    }

    private static String shown(JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return DeskWords.text("conflict.nothing");
        }
        return value.isValueNode() ? value.asText() : value.toString();
    }

    private static void label(Composite parent, String words, Look.Role role) {
        Label l = Look.of(parent).as(role, new Label(parent, SWT.NONE));
        l.setText(words);
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

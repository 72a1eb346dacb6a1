package org.copperbook.winding.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.TwoGaugings;
import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.copperbook.winding.OpenWinding;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Below the wires in hand: every size and grade that the measured diameters allow, to be taken by one press. */
public final class GaugingArea {

    private static final int WIDE_CHARS = 60;
    private static final int MOST = 6;

    private final OpenWinding winding;
    private final GaugedWires gauged;
    private final Composite area;
    private List<JsonNode> shown = List.of();

    public GaugingArea(Composite area, OpenWinding winding) {
        this.area = area;
        this.winding = winding;
        this.gauged = new GaugedWires(winding.words());
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 3).extendedMargins(0, 0, 0, 10).applyTo(area);
    }

    /** What a row's diameters say, for a cell. */
    public static String inWords(OpenWinding winding, JsonNode row) {
        return new GaugedWires(winding.words()).inWords(row);
    }

    /** Shows what the record's wires may be; built anew only when a diameter, size or grade has changed. */
    public void refresh() {
        List<JsonNode> rows = new ArrayList<>();
        winding.document().rows(winding.key(), "/wire").forEach(rows::add);
        if (rows.equals(shown)) {
            return;
        }
        shown = rows;
        for (Control c : area.getChildren()) {
            c.dispose();
        }
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            gauged.of(rows.get(i)).ifPresent(g -> show(row, rows.get(row), g));
        }
        area.requestLayout();
    }

    private void show(int row, JsonNode wire, TwoGaugings of) {
        Look look = Look.of(area);
        String key = of.matches().isEmpty() ? "gauged.rowNothing" : of.ambiguous() ? "gauged.rowSeveral" : "gauged.rowOne";
        line(look, winding.words().text(key, row + 1), 2);
        for (int i = 0; i < Math.min(MOST, of.matches().size()); i++) {
            TwoGaugings.Match m = of.matches().get(i);
            Button take = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
            take.setText(winding.words().text(isTaken(wire, m) ? "gauged.taken" : "gauged.take", gauged.name(m)));
            take.setData(Desk.ID, "gauged." + row + "." + i);
            take.setEnabled(!isTaken(wire, m) && winding.site().blocked().isEmpty());
            take.addListener(SWT.Selection, e -> take(row, m));
            line(look, winding.words().text(m.grade() == InsulationGrade.BARE ? "gauged.rangeBare" : "gauged.range",
                    m.range().minimum() * 1e3, m.range().maximum() * 1e3, m.range().source()), 1);
        }
        if (of.matches().size() > MOST) {
            line(look, winding.words().text("gauged.further", of.matches().size() - MOST), 2);
        }
    }

    private void line(Look look, String text, int span) {
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        l.setText(text);
        GridDataFactory.fillDefaults().span(span, 1).align(SWT.FILL, SWT.CENTER).grab(true, false)
                .hint(look.chars(WIDE_CHARS / (3 - span)), SWT.DEFAULT).applyTo(l);
    }

    private static boolean isTaken(JsonNode wire, TwoGaugings.Match m) {
        return m.size().label().equals(wire.path("size").asText())
                && (m.grade() == InsulationGrade.BARE || wire.path("grade").asInt() == m.grade().ordinal());
    }

    private void take(int row, TwoGaugings.Match m) {
        winding.document().change(winding.key(), "/wire/" + row + "/size", tree -> {
            ObjectNode wire = (ObjectNode) tree.at("/wire/" + row);
            wire.put("size", m.size().label());
            if (m.grade() != InsulationGrade.BARE) {
                wire.put("grade", m.grade().ordinal());
            }
            return tree;
        });
    }
}

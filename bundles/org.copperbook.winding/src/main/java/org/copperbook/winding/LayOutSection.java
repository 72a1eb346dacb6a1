package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Lays the coil list out from the description. */
final class LayOutSection implements WindingSection {

    private static final int MOST_TURNS = 100_000;

    private final OpenWinding winding;
    private final CoilListFromDescription layout = new CoilListFromDescription();
    private Label said;

    LayOutSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        here.section("winding.layoutTitle").integer("/turnsPerCoil", "winding.turns", 1, MOST_TURNS);
        Composite area = here.area();
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Look look = Look.of(area);
        Button button = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
        button.setText(winding.words().text("winding.layOut"));
        button.setData(Desk.ID, "winding.layOut");
        button.addListener(SWT.Selection, e -> layOut());
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setText(winding.words().text("winding.layOutHint"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
    }

    private void layOut() {
        Optional<WindingData> data = winding.data();
        Optional<String> blocked = winding.site().blocked();
        if (blocked.isPresent() || data.isEmpty()) {
            say(blocked.orElse(winding.words().text("layout.needs")));
            return;
        }
        try {
            ObjectNode next = layout.laidOut(winding.document().tree(winding.key()), data.get());
            winding.document().change(winding.key(), "/groups", tree -> next);
            say(winding.words().text("winding.laidOut", next.path("groups").size(),
                    next.path("coilCount").asInt()));
        } catch (CoilListFromDescription.NotEnough e) {
            say(e.getMessage());
        }
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}

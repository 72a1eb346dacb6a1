package org.copperbook.winding.memory;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.theme.Look;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Says plainly that the record is a proposal and not evidence, until a person confirms it. */
public final class ProposalSection implements WindingSection {

    private final OpenWinding winding;
    private Form form;
    private Composite area;
    private Label mark;
    private Label said;
    private Button confirm;

    public ProposalSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        form = here;
        area = here.area("proposal.title");
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        Look look = Look.of(area);
        mark = look.as(Look.Role.STRONG, new Label(area, SWT.WRAP));
        mark.setData(Desk.ID, "proposal.mark");
        wrapped(mark, look);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "proposal.said");
        wrapped(said, look);
        confirm = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
        confirm.setText(winding.words().text("proposal.confirm"));
        confirm.setData(Desk.ID, "proposal.confirm");
        confirm.addListener(SWT.Selection, e -> confirm());
        GridDataFactory.swtDefaults().applyTo(confirm);
    }

    private static void wrapped(Label label, Look look) {
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(label);
    }

    /** Puts the cursor on the confirmation, when there is something to confirm. */
    public boolean focus() {
        return confirm.isVisible() && confirm.setFocus();
    }

    @Override
    public void changed() {
        JsonNode tree = winding.document().tree(winding.key());
        JsonNode list = tree.path("takenOver");
        List<Object> before = seen();
        boolean stands = Proposal.stands(tree);
        visible(stands || list.size() > 0);
        shown(confirm, stands);
        confirm.setEnabled(stands && winding.site().blocked().isEmpty());
        if (stands) {
            mark.setForeground(Look.of(mark).palette().problem());
            mark.setText(winding.words().text("proposal.mark", tree.path("proposedFrom").asText()));
            said.setText(list.size() == 0 ? winding.words().text("proposal.compare")
                    : winding.words().text("proposal.filled", fields(list.get(list.size() - 1))));
        } else if (list.size() > 0) {
            JsonNode last = list.get(list.size() - 1);
            mark.setForeground(null);
            mark.setText(winding.words().text("proposal.confirmed", last.path("from").asText()));
            said.setText(winding.words().text("proposal.confirmedBy", name(last.path("confirmedBy").asText("")),
                    moment(last.path("confirmedAt").asText(""))));
        }
        if (!before.equals(seen())) {
            form.relayout();
        }
    }

    /** What takes room on the page. */
    private List<Object> seen() {
        return List.of(area.getVisible(), confirm.getVisible(), mark.getText(), said.getText());
    }

    private String fields(JsonNode taken) {
        List<String> names = new ArrayList<>();
        taken.path("fields").forEach(f -> names.add(FieldNames.of(f.asText(), winding.words())));
        return names.isEmpty() ? "\u2013" : String.join(", ", names);
    }

    private String name(String key) {
        return key.isEmpty() ? winding.words().text("proposal.nobody") : winding.site().people().getOrDefault(key, key);
    }

    private static String moment(String iso) {
        return iso.isEmpty() ? "\u2013" : Days.ofLocale().moment(Instant.parse(iso));
    }

    private void confirm() {
        Optional<String> who = winding.site().who();
        if (who.isEmpty()) {
            said.setText(winding.words().text("proposal.who"));
            form.relayout();
            return;
        }
        winding.document().change(winding.key(), "/proposedFrom",
                (ObjectNode tree) -> Proposal.confirmed(tree, who.get(), Instant.now()));
    }

    /** The section stands only where something was taken over; its title and line go with it. */
    private void visible(boolean now) {
        Control[] all = area.getParent().getChildren();
        int at = List.of(all).indexOf(area);
        for (int i = Math.max(0, at - 2); i <= at; i++) {
            shown(all[i], now);
        }
    }

    private static void shown(Control control, boolean now) {
        if (!(control.getLayoutData() instanceof GridData)) {
            control.setLayoutData(new GridData());
        }
        ((GridData) control.getLayoutData()).exclude = !now;
        control.setVisible(now);
    }
}

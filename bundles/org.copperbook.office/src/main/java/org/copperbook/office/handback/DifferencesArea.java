package org.copperbook.office.handback;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.handback.HandBack;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says where what goes back is not what came, ticks everything off at once, and adds what the list does not have yet. */
final class DifferencesArea {

    private final PageSite site;
    private final Words words;
    private final Button all;
    private final Label said;

    DifferencesArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        all = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        all.setText(words.text("items.all"));
        all.setData(Desk.ID, "items.all");
        all.addListener(SWT.Selection, e -> tickAll());
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "items.differences");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
    }

    void show() {
        all.setEnabled(site.blocked().isEmpty());
        List<String> differences = new HandingBack(site.document().job()).differences();
        say(differences.isEmpty() ? words.text("items.agree")
                : words.text("items.differ") + "\n\u2022 " + String.join("\n\u2022 ", differences));
    }

    /** Every part that came goes back, as one step; rows that say otherwise stay as they are. */
    private void tickAll() {
        List<HandBack.Item> expected = HandingBack.expected(site.document().job());
        Optional<String> refused = site.document().change(site.key(), "/items", tree -> {
            ArrayNode items = tree.withArray("items");
            List<HandBack.Item> rows = new ArrayList<>();
            items.forEach(row -> rows.add(new HandBack.Item(row.path("name").asText(""), row.path("machine").asBoolean(),
                    row.path("back").asBoolean(), null, null)));
            int[] places = HandingBack.rowsOf(expected, rows);
            for (int e = 0; e < places.length; e++) {
                if (places[e] < 0) {
                    items.add(Expected.row(site.json(), expected.get(e)).put("back", true));
                } else if (!items.get(places[e]).hasNonNull("back")) {
                    ((ObjectNode) items.get(places[e])).put("back", true);
                }
            }
            return tree;
        });
        refused.ifPresent(this::say);
    }

    private void say(String text) {
        if (!text.equals(said.getText())) {
            said.setText(text);
            said.requestLayout();
        }
    }
}

package org.copperbook.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.Finding;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Makes a finding of every point of the checklist that is worn, damaged or missing and is none yet; one undo step. */
final class FindingsFromList {

    private final PageSite site;
    private final Words words;
    private final Label said;

    FindingsFromList(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(0, 0, 0, 10).applyTo(area);
        Look look = Look.of(area);
        Button make = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        make.setText(words.text("inspection.makeFindings"));
        make.setData(Desk.ID, "inspection.makeFindings");
        make.addListener(SWT.Selection, e -> make());
        said = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        said.setData(Desk.ID, "inspection.madeFindings");
    }

    private void make() {
        if (site.blocked().isPresent()) {
            say(site.blocked().get());
            return;
        }
        int[] made = new int[1];
        Optional<String> refused = site.document().change(site.key(), "/findings", tree -> {
            made[0] = 0;
            Set<String> known = new HashSet<>();
            ArrayNode findings = tree.withArray("findings");
            findings.forEach(f -> known.add(f.path("where").asText()));
            for (JsonNode item : tree.path("checklist")) {
                String condition = item.path("condition").asText();
                if (isBad(condition) && known.add(item.path("point").asText())) {
                    findings.add(finding(item, ChecklistItem.Condition.valueOf(condition)));
                    made[0]++;
                }
            }
            return tree;
        });
        say(refused.orElseGet(() -> words.text("inspection.madeFindings", made[0])));
    }

    private void say(String text) {
        said.setText(text);
        said.getParent().layout(true, true);
    }

    private static boolean isBad(String condition) {
        return condition.equals("WORN") || condition.equals("DAMAGED") || condition.equals("MISSING");
    }

    private ObjectNode finding(JsonNode item, ChecklistItem.Condition condition) {
        String note = item.path("note").asText("");
        ObjectNode finding = site.json().mapper().createObjectNode().put("where", item.path("point").asText())
                .put("severity", (condition == ChecklistItem.Condition.WORN ? Finding.Severity.SHOULD_BE_DONE
                        : Finding.Severity.MUST_BE_DONE).name())
                .put("text", words.of(condition) + (note.isBlank() ? "" : ": " + note));
        if (item.hasNonNull("work")) {
            finding.put("proposedWork", item.path("work").asText());
        }
        if (item.path("photos").isArray() && !item.path("photos").isEmpty()) {
            finding.set("photos", item.path("photos").deepCopy());
        }
        return finding;
    }
}

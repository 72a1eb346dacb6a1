package org.copperbook.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.form.Actions;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.Finding;
import org.eclipse.swt.widgets.Composite;

/** Makes a finding of every point of the checklist that is worn, damaged or missing and is none yet; one undo step. */
final class FindingsFromList {

    private final PageSite site;
    private final Words words;

    FindingsFromList(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        new Actions(area, site, "inspection.madeFindings").button("inspection.makeFindings",
                words.text("inspection.makeFindings"), this::make);
    }

    private String make() {
        int[] made = new int[1];
        Optional<String> refused = site.document().change(site.key(), "/findings", tree -> {
            made[0] = 0;
            Set<String> known = new HashSet<>();
            ArrayNode findings = tree.withArray("findings");
            findings.forEach(f -> known.add(f.path("where").asText()));
            Set<String> points = new HashSet<>();
            Set<String> twice = new HashSet<>();
            for (JsonNode item : tree.path("checklist")) {
                if (!points.add(item.path("point").asText())) {
                    twice.add(item.path("point").asText());
                }
            }
            for (JsonNode item : tree.path("checklist")) {
                String condition = item.path("condition").asText();
                String point = item.path("point").asText();
                // Of two points of one name only the area says which is meant.
                String where = twice.contains(point) ? item.path("area").asText() + ", " + point : point;
                if (isBad(condition) && known.add(where)) {
                    findings.add(finding(item, where, ChecklistItem.Condition.valueOf(condition)));
                    made[0]++;
                }
            }
            return tree;
        });
        return refused.orElseGet(() -> words.text("inspection.madeFindings", made[0]));
    }

    private static boolean isBad(String condition) {
        return condition.equals("WORN") || condition.equals("DAMAGED") || condition.equals("MISSING");
    }

    private ObjectNode finding(JsonNode item, String where, ChecklistItem.Condition condition) {
        String note = item.path("note").asText("");
        ObjectNode finding = site.json().mapper().createObjectNode().put("where", where)
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

package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.quote.QuoteLine;

/** Takes the work that the findings propose over as lines of the first alternative, still without a price; one undo step. */
final class FindingLines {

    private final PageSite site;
    private final Words words;

    FindingLines(PageSite site, Words words) {
        this.site = site;
        this.words = words;
    }

    /** Takes the proposed work over and says how many lines came of it. */
    String take() {
        List<String> proposed = site.document().part(PartKey.of(PartKind.INSPECTION), Inspection.class).stream()
                .flatMap(i -> i.findings().stream()).filter(f -> f.proposedWork() != null && !f.proposedWork().isBlank())
                .map(FindingLines::text).toList();
        int[] taken = new int[1];
        Optional<String> refused = site.document().change(site.key(), "/alternatives/0/lines", tree -> {
            taken[0] = 0;
            ArrayNode alternatives = tree.withArray("alternatives");
            Set<String> known = new HashSet<>();
            alternatives.forEach(a -> a.path("lines").forEach(l -> known.add(l.path("text").asText())));
            ObjectNode first = alternatives.isEmpty() ? alternatives.addObject() : (ObjectNode) alternatives.get(0);
            String tax = tree.path("taxes").path(0).path("code").asText("");
            for (String text : proposed) {
                if (known.add(text)) {
                    ObjectNode line = first.withArray("lines").addObject().put("kind", QuoteLine.Kind.LABOUR.name())
                            .put("text", text).put("quantity", BigDecimal.ONE).put("unit", "h");
                    if (!tax.isEmpty()) {
                        line.put("tax", tax);
                    }
                    taken[0]++;
                }
            }
            return tree;
        });
        return refused.orElseGet(() -> words.text("quote.tookFindings", taken[0]));
    }

    private static String text(Finding f) {
        return f.where() == null || f.where().isBlank() ? f.proposedWork() : f.where() + ": " + f.proposedWork();
    }
}

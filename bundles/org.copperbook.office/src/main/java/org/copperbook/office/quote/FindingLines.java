package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.TradeOfWork;
import org.copperbook.jobs.winding.WindingRole;

/** Takes the work that the findings propose over as lines of the marked alternative, still without a price; one undo step. */
final class FindingLines {

    private final PageSite site;
    private final Words words;
    private final IntSupplier marked;

    /** @param marked the alternative that the cursor is on, or -1 */
    FindingLines(PageSite site, Words words, IntSupplier marked) {
        this.site = site;
        this.words = words;
        this.marked = marked;
    }

    /** Takes the proposed work over and says how many lines came of it, and how many of them have no trade. */
    String take() {
        List<Finding> proposed = site.document().part(PartKey.of(PartKind.INSPECTION), Inspection.class).stream()
                .flatMap(i -> i.findings().stream()).filter(f -> f.proposedWork() != null && !f.proposedWork().isBlank()).toList();
        int to = Math.max(0, marked.getAsInt());
        int[] counts = new int[2];
        Optional<String> refused = site.document().change(site.key(), SideBySide.LIST + "/" + to + "/lines", tree -> {
            counts[0] = 0;
            counts[1] = 0;
            ArrayNode alternatives = tree.withArray("alternatives");
            ObjectNode into = alternatives.isEmpty() ? alternatives.addObject() : (ObjectNode) alternatives.get(to);
            Set<String> known = new HashSet<>();
            into.path("lines").forEach(l -> known.add(l.path("text").asText()));
            String tax = tree.path("taxes").path(0).path("code").asText("");
            for (Finding f : proposed) {
                String text = text(where(f), f);
                // Lines that were taken over before places had words carry the key of the winding.
                if (!known.contains(text(f.where(), f)) && known.add(text)) {
                    ObjectNode line = into.withArray("lines").addObject().put("kind", QuoteLine.Kind.LABOUR.name())
                            .put("text", text).put("quantity", BigDecimal.ONE).put("unit", "h");
                    Optional<String> trade = TradeOfWork.of(f, site.shop().rates());
                    trade.ifPresent(t -> line.put("trade", t));
                    if (!tax.isEmpty()) {
                        line.put("tax", tax);
                    }
                    counts[0]++;
                    counts[1] += trade.isPresent() ? 0 : 1;
                }
            }
            return tree;
        });
        return refused.orElseGet(() -> said(to, counts[0], counts[1]));
    }

    private String said(int to, int lines, int withoutTrade) {
        String name = site.document().value(site.key(), SideBySide.LIST + "/" + to + "/name").asText("").strip();
        String took = words.text("quote.tookFindings", lines,
                name.isEmpty() ? words.text("quote.alternative", to + 1) : "\"" + name + "\"");
        return withoutTrade == 0 ? took : took + " " + words.text("quote.noTrade", withoutTrade);
    }

    /** Where it was found in words; the key of a winding would be no word for a customer. */
    private String where(Finding f) {
        return Arrays.stream(WindingRole.values()).filter(r -> f.where() != null && r.word().equalsIgnoreCase(f.where().strip()))
                .findFirst().map(words::of).orElse(f.where());
    }

    private static String text(String where, Finding f) {
        return where == null || where.isBlank() ? f.proposedWork() : where + ": " + f.proposedWork();
    }
}

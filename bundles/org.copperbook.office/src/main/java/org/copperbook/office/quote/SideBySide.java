package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.copperbook.desk.form.Actions;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.QuoteFigures;

/**
 * The alternatives side by side: what the customer will read, and below it what only the workshop may know. Alternatives
 * are added, named and taken out in the grid, copied and put in another order by the buttons below it.
 */
final class SideBySide {

    /** List of the alternatives in the record. */
    static final String LIST = "/alternatives";
    private static final List<String> USUAL = List.of("quote.cleanAndDry", "quote.partRepair", "quote.fullRewind",
            "quote.replace");

    private final PageSite site;
    private final Words words;
    private final QuoteSums sums;
    private final Supplier<Optional<String>> closed;
    private RecordGrid grid;

    /** @param closed why alternatives may not be changed now; empty when they may */
    SideBySide(PageSite site, Words words, QuoteSums sums, Supplier<Optional<String>> closed) {
        this.closed = closed;
        this.site = site;
        this.words = words;
        this.sums = sums;
    }

    void put(Form here) {
        grid = here.grid("quote.sideBySide", LIST, columns -> columns
                .text("/name", "alternative.name")
                .computed("net", "alternative.net", of(i -> sums.amount(i, f -> f.totals().net())))
                .computed("tax", "alternative.tax", of(i -> sums.amount(i,
                        f -> f.totals().gross().subtract(f.totals().net()))))
                .computed("gross", "alternative.gross", of(i -> sums.amount(i, f -> f.totals().gross())))
                .computedText("limit", "alternative.limit", of(sums::againstLimit)))
                .newRow(this::another);
        new Actions(here.area(), site, "alternatives/said").unless(closed)
                .button("quote.copyAlternative", words.text("quote.copyAlternative"), this::copy)
                .button("quote.moveUp", words.text("quote.moveUp"), () -> move(-1))
                .button("quote.moveDown", words.text("quote.moveDown"), () -> move(1));
        here.words("quote.insideOnly");
        here.grid("quote.inside", LIST, columns -> columns
                .computedText("named", "alternative.name", row -> row.path("name").asText())
                .computedMark("hours", "alternative.hours", of(i -> sums.number(i, QuoteFigures::hours)))
                .computed("copper", "alternative.copper", of(i -> sums.number(i, a -> QuoteFigures.copperKg(a, sums.wire()))))
                .computed("cost", "alternative.cost", of(i -> sums.amount(i, QuoteFigures::cost)))
                .computed("earned", "alternative.earned", of(i -> sums.amount(i, QuoteFigures::earned)))
                .computed("markUpReached", "alternative.markUpReached", of(i -> sums.percent(i, QuoteFigures::markUpReached)))
                .computed("marginReached", "alternative.marginReached", of(i -> sums.percent(i, QuoteFigures::marginReached))));
    }

    /** The alternative that the cursor is on, from 0; -1 when there is none. */
    int marked() {
        return grid.row() < grid.model().filled() ? grid.row() : -1;
    }

    private java.util.function.Function<JsonNode, String> of(IntFunction<String> text) {
        return row -> {
            ArrayNode rows = site.document().rows(site.key(), LIST);
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i) == row) {
                    return text.apply(i);
                }
            }
            return "";
        };
    }

    private ObjectNode another() {
        Set<String> taken = names();
        String name = USUAL.stream().map(words::text).filter(u -> !taken.contains(u)).findFirst()
                .orElseGet(() -> words.text("quote.alternative", site.document().rows(site.key(), LIST).size() + 1));
        return site.json().mapper().createObjectNode().put("name", name);
    }

    private Set<String> names() {
        Set<String> names = new HashSet<>();
        site.document().rows(site.key(), LIST).forEach(a -> names.add(a.path("name").asText()));
        return names;
    }

    private String copy() {
        int from = marked();
        if (from < 0) {
            return words.text("quote.markFirst");
        }
        ObjectNode copy = site.document().rows(site.key(), LIST).get(from).deepCopy();
        Set<String> taken = names();
        String name = words.text("quote.copyOf", copy.path("name").asText());
        for (int n = 2; taken.contains(name); n++) {
            name = words.text("quote.copyOfAgain", copy.path("name").asText(), n);
        }
        copy.put("name", name);
        String said = words.text("quote.copied", name);
        String refused = site.document().insertRow(site.key(), LIST, from + 1, copy).orElse(null);
        if (refused == null) {
            // The name is typed next: left on the button, its first blank would make another copy.
            grid.reveal(LIST + "/" + (from + 1) + "/name");
        }
        return refused == null ? said : refused;
    }

    private String move(int by) {
        int from = marked();
        if (from < 0) {
            return words.text("quote.markFirst");
        }
        int to = from + by;
        if (to < 0 || to >= grid.model().filled()) {
            return words.text(by < 0 ? "quote.isFirst" : "quote.isLast");
        }
        String refused = site.document().moveRow(site.key(), LIST, from, to).orElse(null);
        if (refused == null) {
            grid.moveTo(to, 0);
        }
        return refused == null ? "" : refused;
    }
}

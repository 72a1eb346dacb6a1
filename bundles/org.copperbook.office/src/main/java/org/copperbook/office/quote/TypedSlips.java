package org.copperbook.office.quote;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;

/**
 * Numbers of a quote that stand as they were typed because they could not be read. The record is without them, and a sum made
 * of it would take them for blank.
 */
final class TypedSlips {

    private static final Pattern OF_ALTERNATIVE = Pattern.compile("/alternatives/(\\d+)/(?:lines/(\\d+)/)?(\\w+)");
    private static final Pattern OF_TAX = Pattern.compile("/taxes/(\\d+)/ratePercent");
    private static final Map<String, String> OF_LINE = Map.of("quantity", "line.quantity", "unitPrice", "line.unitPrice",
            "discountPercent", "line.discount");
    private static final Map<String, String> OF_ALL = Map.of("markUpPercent", "alternative.markUp", "marginPercent",
            "alternative.margin", "discountPercent", "alternative.discount");

    private final PageSite site;
    private final Words words;

    TypedSlips(PageSite site, Words words) {
        this.site = site;
        this.words = words;
    }

    /** The first slip that the sum of an alternative would be wrong by, with its place; empty when there is none. */
    Optional<String> in(int alternative) {
        return site.document().draft(site.key()).asTyped().entrySet().stream()
                .flatMap(e -> slip(alternative, e.getKey(), e.getValue()).stream()).findFirst();
    }

    private Optional<String> slip(int alternative, String pointer, String text) {
        Matcher tax = OF_TAX.matcher(pointer);
        if (tax.matches()) {
            return Optional.of(words.text("quote.slipInTax", Integer.parseInt(tax.group(1)) + 1, why(new DecimalEntry(), text)));
        }
        Matcher at = OF_ALTERNATIVE.matcher(pointer);
        if (!at.matches() || Integer.parseInt(at.group(1)) != alternative) {
            return Optional.empty();
        }
        boolean inLine = at.group(2) != null;
        String label = (inLine ? OF_LINE : OF_ALL).get(at.group(3));
        if (label == null) {
            return Optional.empty();
        }
        Entry entry = label.equals("line.unitPrice") ? DecimalEntry.price() : new DecimalEntry();
        return Optional.of(inLine
                ? words.text("quote.slipInLine", alternative + 1, Integer.parseInt(at.group(2)) + 1, words.text(label), why(entry, text))
                : words.text("quote.slipInAlternative", alternative + 1, words.text(label), why(entry, text)));
    }

    private String why(Entry entry, String text) {
        Typed read = entry.read(text);
        if (read instanceof Typed.Wrong w) {
            return w.why();
        }
        return read instanceof Typed.Ambiguous a ? a.question() : words.text("quote.slipDoesNotFit", text);
    }
}

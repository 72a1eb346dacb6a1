package org.copperbook.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.quote.UnpriceableQuoteException;

/** A quote: alternatives with their lines, taxes, terms, and the customer's answer. */
public final class QuotePage extends PartPage {

    private static final int MOST_ALTERNATIVES = 6;

    @Override
    protected Words words() {
        return Words.of(QuotePage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("quote.head")
                .integer("/revision", "quote.revision", 1, 999)
                .text("/currency", "quote.currency")
                .date("/date", "quote.date")
                .date("/validUntil", "quote.validUntil")
                .text("/language", "quote.language");
        new FindingLines(here.area(), site(), words());
        int shown = Math.min(MOST_ALTERNATIVES, alternatives() + 1);
        for (int i = 0; i < shown; i++) {
            alternative(here, i);
        }
        here.grid("quote.taxes", "/taxes", columns -> columns
                .mark("/code", "tax.code")
                .text("/name", "tax.name")
                .decimal("/ratePercent", "tax.rate"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("quote.words")
                .longText("/terms", "quote.terms")
                .longText("/exclusions", "quote.exclusions");
        here.section("quote.answer")
                .either("/approval/agreed", "approval.agreed", "approval.yes", "approval.no")
                .text("/approval/alternative", "approval.alternative")
                .proposals("/approval/by", "approval.by", this::names)
                .text("/approval/how", "approval.how")
                .moment("/approval/at", "approval.at")
                .decimal("/approval/limit", "approval.limit")
                .text("/approval/note", "approval.note");
    }

    private void alternative(Form here, int index) {
        String at = "/alternatives/" + index;
        here.section(index < alternatives() ? "quote.alternative" : "quote.another")
                .text(at + "/name", "alternative.name")
                .decimal(at + "/markUpPercent", "alternative.markUp")
                .decimal(at + "/discountPercent", "alternative.discount")
                .text(at + "/note", "alternative.note")
                .computed("quote.total." + index, "alternative.total", () -> total(index, false))
                .computed("quote.limit." + index, "alternative.limit", () -> total(index, true));
        here.grid("quote.lines", at + "/lines", columns -> columns
                .choice("/kind", "line.kind", QuoteLine.Kind.class)
                .text("/text", "line.text")
                .decimal("/quantity", "line.quantity")
                .mark("/unit", "line.unit")
                .decimal("/unitPrice", "line.unitPrice")
                .mark("/trade", "line.trade")
                .decimal("/discountPercent", "line.discount")
                .mark("/tax", "line.tax"))
                .newRow(this::newLine);
    }

    /** Everybody the shop knows, since the answer comes from the customer. */
    private Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        site().shop().people().forEach((key, person) -> names.put(key, person.name()));
        return names;
    }

    private ObjectNode newLine() {
        ObjectNode row = site().json().mapper().createObjectNode().put("quantity", BigDecimal.ONE);
        quote().flatMap(q -> q.taxes().stream().findFirst()).ifPresent(t -> row.put("tax", t.code()));
        return row;
    }

    private int alternatives() {
        return quote().map(q -> q.alternatives().size()).orElse(0);
    }

    private Optional<Quote> quote() {
        return document().part(key(), Quote.class);
    }

    /** The total of an alternative, or what it means for the limit up to which nobody has to ask. */
    private String total(int index, boolean againstLimit) {
        Optional<Quote> quote = quote();
        if (quote.isEmpty() || quote.get().alternatives().size() <= index
                || quote.get().alternatives().get(index).lines().isEmpty()) {
            return "";
        }
        try {
            QuotePrices prices = new QuotePrices(quote.get());
            QuoteTotals totals = prices.totals(quote.get().alternatives().get(index));
            NumberFormat money = NumberFormat.getInstance();
            money.setMinimumFractionDigits(prices.currency().digits());
            money.setMaximumFractionDigits(prices.currency().digits());
            String sum = words().text("alternative.sum", money.format(totals.net()), money.format(totals.gross()),
                    quote.get().currency());
            BigDecimal limit = document().job().booking().map(b -> b.spendLimit()).orElse(null);
            if (!againstLimit) {
                return sum;
            }
            return limit == null ? "" : words().text(totals.gross().compareTo(limit) <= 0 ? "alternative.underLimit"
                    : "alternative.overLimit", money.format(limit));
        } catch (UnpriceableQuoteException open) {
            return againstLimit ? "" : open.getMessage();
        }
    }

    @Override
    protected ObjectNode beginning() {
        ObjectNode tree = super.beginning();
        if (!tree.has("revision")) {
            tree.put("revision", 1);
        }
        if (!tree.has("currency")) {
            tree.put("currency", site().shop().workshop().currency());
        }
        return tree;
    }
}

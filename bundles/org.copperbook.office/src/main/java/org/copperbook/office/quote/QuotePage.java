package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.entry.TextEntry;
import org.copperbook.desk.form.Actions;
import org.copperbook.desk.form.Block;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.office.Quotes;
import org.copperbook.sheets.ShippedLanguages;
import org.eclipse.swt.widgets.Composite;

/** A quote: alternatives side by side and with their lines, taxes, terms, and the customer's answer. */
public final class QuotePage extends PartPage {

    /** Width with which what a line is, its quantity and its price are in sight together in a small window. */
    private static final int SHORT = 6;

    private final List<Block> alternatives = new ArrayList<>();
    private QuoteSums sums;
    private Sending sending;
    private Proposals proposals;
    private Block taxes;

    @Override
    protected Words words() {
        return Words.of(Quotes.class);
    }

    @Override
    protected void build(Form here) {
        sums = new QuoteSums(site(), words());
        sending = new Sending(site(), words(), sums);
        here.section("quote.head")
                .integer("/revision", "quote.revision", 1, 999)
                .text("/currency", "quote.currency")
                .date("/date", "quote.date")
                .date("/validUntil", "quote.validUntil")
                .proposals("/language", "quote.language", ShippedLanguages::names)
                .choice("/rounding", "quote.rounding", RoundingRule.class)
                .computed("quote.rule", "quote.rule", () -> said(sums.rule(), proposals.notConverted(0, sums.alternatives())));
        SideBySide beside = new SideBySide(site(), words(), sums, sending::closed);
        beside.put(here);
        Composite proposing = here.area();
        proposals = new Proposals(site(), words(), beside::marked, new Shelf(site(), words(), proposing, this::stockRead));
        FindingLines findings = new FindingLines(site(), words(), beside::marked);
        Actions actions = new Actions(proposing, site(), "quote.tookFindings").unless(sending::closed)
                .button("quote.takeFindings", words().text("quote.takeFindings"), findings::take)
                .button("quote.propose", words().text("quote.propose"), proposals::lines)
                .button("quote.priceLines", words().text("quote.priceLines"), proposals::prices);
        proposals.ask(new PartChoices(proposing, words(), site().shop().workshop().currency(), here::relayout), actions::again);
        if (document().part(key()).isEmpty()) {
            CustomersWishes.read(site(), words(), proposing, this::begunFor);
        }
        for (int i = 0; i < sums.alternatives(); i++) {
            int index = i;
            alternatives.add(here.block(() -> alternative(here, index)));
        }
        taxes = here.block(() -> here.grid("quote.taxes", "/taxes", columns -> columns
                .mark("/code", "tax.code")
                .text("/name", "tax.name")
                .decimal("/ratePercent", "tax.rate"))
                .newRow(() -> site().json().mapper().createObjectNode()));
        here.section("quote.words")
                .longText("/terms", "quote.terms")
                .longText("/exclusions", "quote.exclusions");
        sending.put(here);
        here.section("quote.answer")
                .either("/approval/agreed", "approval.agreed", "approval.yes", "approval.no")
                .proposals("/approval/alternative", "approval.alternative", this::names)
                .proposals("/approval/by", "approval.by", this::people)
                .text("/approval/how", "approval.how")
                .moment("/approval/at", "approval.at")
                .price("/approval/limit", "approval.limit")
                .text("/approval/note", "approval.note")
                .computed("quote.answered", "approval.lacks", sums::answer);
    }

    private void alternative(Form here, int index) {
        String at = SideBySide.LIST + "/" + index;
        here.section("quote.alternative", index + 1)
                .text(at + "/name", "alternative.name")
                .decimalInPlaceOf(at + "/marginPercent", at + "/markUpPercent", "alternative.markUp")
                .decimalInPlaceOf(at + "/markUpPercent", at + "/marginPercent", "alternative.margin")
                .computed("quote.markUpAndMargin." + index, "alternative.markUpAndMargin",
                        () -> sums.markUpAndMargin(index))
                .decimal(at + "/discountPercent", "alternative.discount")
                .text(at + "/note", "alternative.note")
                .computed("quote.total." + index, "alternative.total",
                        () -> said(sums.total(index), proposals.notConverted(index, index + 1)))
                .computed("quote.limit." + index, "alternative.limit", () -> sums.againstLimit(index));
        here.grid("quote.lines", at + "/lines", columns -> columns
                .entry("/kind", "line.kind", here.choice(QuoteLine.Kind.class), SHORT)
                .textBefore("/unitPrice", "/text", "line.text")
                .entry("/quantity", "line.quantity", new DecimalEntry(), SHORT)
                .entry("/unit", "line.unit", new TextEntry(), SHORT)
                .price("/unitPrice", "line.unitPrice")
                .mark("/trade", "line.trade")
                .mark("/wire", "line.wire")
                .decimal("/discountPercent", "line.discount")
                .mark("/tax", "line.tax"), index + 1)
                .newRow(this::newLine);
    }

    private static String said(String first, String then) {
        return then.isEmpty() ? first : first.isEmpty() ? then : first + (first.endsWith(".") ? " " : ". ") + then;
    }

    /** Which prices are the stock's is seen only now. */
    private void stockRead() {
        if (!proposals.isShopsCurrency()) {
            refresh();
        }
    }

    /**
     * Alternatives come and go while the page is open; each has its block from the first time that it is there. What went
     * out to the customer cannot be typed over.
     */
    @Override
    protected void changed() {
        int now = sums.alternatives();
        while (alternatives.size() < now) {
            int index = alternatives.size();
            alternatives.add(form().blockBefore(taxes, () -> alternative(form(), index)));
        }
        for (int i = 0; i < alternatives.size(); i++) {
            alternatives.get(i).show(i < now);
        }
        form().editableOnly(sending::isOpen);
    }

    private Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        sums.quote().ifPresent(q -> q.alternatives().stream().map(Quote.Alternative::name)
                .filter(n -> n != null && !n.isBlank()).forEach(n -> names.put(n, n)));
        return names;
    }

    /** Everybody the shop knows, since the answer comes from the customer. */
    private Map<String, String> people() {
        Map<String, String> names = new LinkedHashMap<>();
        site().shop().people().forEach((key, person) -> names.put(key, person.name()));
        return names;
    }

    private ObjectNode newLine() {
        ObjectNode row = site().json().mapper().createObjectNode().put("quantity", BigDecimal.ONE);
        sums.quote().flatMap(q -> q.taxes().stream().findFirst()).ifPresent(t -> row.put("tax", t.code()));
        return row;
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
        if (tree.path(SideBySide.LIST.substring(1)).isEmpty()) {
            tree.putArray(SideBySide.LIST.substring(1)).addObject().put("name", words().text("quote.fullRewind"));
        }
        return tree;
    }

    /** A quote that is begun takes language, currency and terms of the customer of the register. */
    private void begunFor(Customer customer) {
        String shops = site().shop().workshop().currency();
        if (document().part(key()).isEmpty()) {
            document().beginWith(key(), CustomersWishes.put(beginning(), customer, shops));
            refresh();
        } else if (document().baseRevision(key()) == 0) {
            document().change(key(), "", tree -> CustomersWishes.put(tree, customer, shops));
        }
    }
}

package org.copperbook.office.handback;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.report.AgreedQuote;
import org.copperbook.office.StandingPage;
import org.copperbook.sheets.ShippedLanguages;

/** Outside work, deliveries, what goes back to the owner, and scrapping with consent. */
public final class HandBackPage extends PartPage {

    private ReceivingArea receiving;
    private DifferencesArea differences;
    private EndingArea ending;
    private SetAsideArea aside;

    @Override
    protected Words words() {
        return Words.of(StandingPage.class);
    }

    @Override
    protected void build(Form here) {
        here.grid("handback.outside", "/outside", columns -> columns
                .text("/what", "outside.what")
                .text("/firm", "outside.firm")
                .text("/orderNo", "outside.orderNo")
                .date("/out", "outside.out")
                .date("/expected", "outside.expected")
                .date("/back", "outside.back")
                .text("/finding", "outside.finding")
                .price("/cost", "outside.cost")
                .proposals("/quoteLine", "outside.quoteLine", this::quotedOutside))
                .newRow(this::row);
        RecordGrid deliveries = here.grid("handback.deliveries", "/deliveries", columns -> columns
                .text("/what", "delivery.what")
                .text("/supplier", "delivery.supplier")
                .text("/orderNo", "delivery.orderNo")
                .date("/ordered", "delivery.ordered")
                .decimal("/quantity", "delivery.quantity")
                .decimal("/came", "delivery.came")
                .date("/lastCame", "delivery.lastCame")
                .computedMark("delivery.missing", "delivery.missing", HandBackPage::missing)
                .text("/note", "delivery.note"))
                .newRow(this::row);
        receiving = new ReceivingArea(here.area(), site(), words(), deliveries);
        here.grid("handback.items", "/items", columns -> columns
                .text("/name", "item.name")
                .either("/back", "item.back", "item.goes", "item.stays")
                .text("/note", "item.note"))
                .newRow(this::row);
        differences = new DifferencesArea(here.area(), site(), words());
        here.section("handback.over")
                .longText("/difference", "handback.difference")
                .longText("/unreleased", "handback.unreleased")
                .date("/handedOver", "handback.handedOver")
                .text("/takenBy", "handback.takenBy")
                .proposals("/language", "handback.language", ShippedLanguages::names);
        here.section("handback.scrapping")
                .text("/scrapping/consentBy", "scrapping.consentBy")
                .text("/scrapping/how", "scrapping.how")
                .date("/scrapping/at", "scrapping.at")
                .text("/scrapping/copper", "scrapping.copper");
        aside = new SetAsideArea(here.area("handback.aside"), site(), words());
        ending = new EndingArea(here.area("handback.ending"), site(), words());
    }

    /** The lines of outside work in the quote, to choose from. */
    private Map<String, String> quotedOutside() {
        Map<String, String> lines = new LinkedHashMap<>();
        AgreedQuote.outsideWork(document().job()).forEach(l -> lines.put(l, l));
        return lines;
    }

    private ObjectNode row() {
        return site().json().mapper().createObjectNode();
    }

    /** What is missing of a row that says what was ordered. */
    private static String missing(JsonNode row) {
        if (!row.hasNonNull("what") && !row.hasNonNull("quantity")) {
            return "";
        }
        BigDecimal ordered = row.hasNonNull("quantity") ? row.get("quantity").decimalValue() : BigDecimal.ONE;
        BigDecimal came = row.hasNonNull("came") ? row.get("came").decimalValue() : BigDecimal.ZERO;
        return ordered.subtract(came).stripTrailingZeros().toPlainString();
    }

    @Override
    protected void changed() {
        if (ending != null) {
            receiving.show();
            differences.show();
            ending.show();
            aside.show();
        }
    }

    /** How the job ended is changed from here in another part. */
    @Override
    public boolean reveal(String pointer) {
        return pointer.equals(EndingArea.CLOSURE) ? ending.focus() : super.reveal(pointer);
    }

    @Override
    protected void judged(java.util.List<Verdict> ofJob) {
        changed();
    }

    @Override
    protected ObjectNode beginning() {
        ObjectNode tree = super.beginning();
        if (!tree.has("items")) {
            ArrayNode items = tree.putArray("items");
            HandingBack.expected(document().job()).forEach(i -> items.add(Expected.row(site().json(), i)));
        }
        return tree;
    }
}

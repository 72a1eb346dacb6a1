package org.copperbook.jobs.handback;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * What leaves the shop and comes back, and how the machine goes back to its owner: outside work, deliveries for the job,
 * what is handed back, and scrapping with consent.
 *
 * @param schema     layout version
 * @param outside    work given to others
 * @param deliveries what was ordered for the job
 * @param items      what is handed back, ticked off one by one
 * @param difference why something that came does not go back, or something goes back that did not come
 * @param handedOver day of handing back
 * @param takenBy    name of who took it; kept outside the chained text
 * @param language   language of the delivery note, BCP 47 tag; English when empty
 * @param unreleased why the machine goes back although it was not released; null when it was, or when nobody has said
 * @param scrapping  consent to scrap the machine, or null
 * @param more       fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record HandBack(int schema, List<OutsideWork> outside, List<Delivery> deliveries, List<Item> items,
        String difference, LocalDate handedOver, String takenBy, String language, String unreleased, Scrapping scrapping,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public HandBack {
        outside = outside == null ? List.of() : List.copyOf(outside);
        deliveries = deliveries == null ? List.of() : List.copyOf(deliveries);
        items = items == null ? List.of() : List.copyOf(items);
        more = more == null ? Map.of() : more;
    }

    /** A record in which nobody had to say why the machine goes back unreleased. */
    public HandBack(int schema, List<OutsideWork> outside, List<Delivery> deliveries, List<Item> items, String difference,
            LocalDate handedOver, String takenBy, String language, Scrapping scrapping, Map<String, JsonNode> more) {
        this(schema, outside, deliveries, items, difference, handedOver, takenBy, language, null, scrapping, more);
    }

    /**
     * Work given to another firm.
     *
     * @param what     shaft, rotor, bearing seat ...
     * @param firm     who does it
     * @param orderNo  order number
     * @param out      when it went; null while it is still here
     * @param expected when it is expected back
     * @param back     when it came back; null while it is out
     * @param finding  what was found when it came back
     * @param cost     what it cost, in the shop's currency and before mark-up; null while that is not known
     * @param quoteLine text of the line of the quote that it belongs to; null to let its name say
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record OutsideWork(String what, String firm, String orderNo, LocalDate out, LocalDate expected,
            LocalDate back, String finding, BigDecimal cost, String quoteLine, @KeepUnknown Map<String, JsonNode> more) {
        public OutsideWork {
            more = more == null ? Map.of() : more;
        }

        /** Whether it is out of the shop. */
        public boolean away() {
            return out != null && back == null;
        }
    }

    /**
     * Something ordered for the job, which may come in parts.
     *
     * @param what     what was ordered
     * @param supplier from whom
     * @param orderNo  order number
     * @param ordered  when
     * @param quantity how many or how much; 1 when not stated
     * @param came     how many or how much came so far; 0 when not stated
     * @param lastCame when the last of it came
     * @param note     remark
     * @param received what of it was put in stock, in the order in which it came
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Delivery(String what, String supplier, String orderNo, LocalDate ordered, BigDecimal quantity,
            BigDecimal came, LocalDate lastCame, String note, List<ReceivedStock> received,
            @KeepUnknown Map<String, JsonNode> more) {
        public Delivery {
            received = received == null ? List.of() : List.copyOf(received);
            more = more == null ? Map.of() : more;
        }

        /** What is still missing; negative when more came than was ordered. */
        public BigDecimal missing() {
            return (quantity == null ? BigDecimal.ONE : quantity).subtract(came == null ? BigDecimal.ZERO : came);
        }
    }

    /**
     * Something handed back.
     *
     * @param name    what it is, as at booking in
     * @param machine true for the machine itself
     * @param back    true when it goes back, false when it does not, null when not ticked yet
     * @param note    remark
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Item(String name, Boolean machine, Boolean back, String note, @KeepUnknown Map<String, JsonNode> more) {
        public Item {
            more = more == null ? Map.of() : more;
        }
    }

    /**
     * The owner's consent to scrap the machine.
     *
     * @param consentBy who consented; kept outside the chained text
     * @param how       by letter, by telephone ...
     * @param at        when
     * @param copper    what happens with the copper and who gets its price
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Scrapping(String consentBy, String how, LocalDate at, String copper,
            @KeepUnknown Map<String, JsonNode> more) {
        public Scrapping {
            more = more == null ? Map.of() : more;
        }
    }
}

package org.copperbook.jobs.handback;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;

/**
 * What of a delivery for a job was put in stock. Its movements are made when the record that first has it is kept, and taken
 * back when a record without it is.
 *
 * @param id       told from every other by this; its movements begin with it, so that each is made once
 * @param item     code of the item
 * @param quantity how much, above zero, in the item's unit
 * @param unit     unit meant; null for the item's own
 * @param lot      lot, delivery or date code; null when not said
 * @param price    price per unit in the workshop's currency; null when not said
 * @param setAside true when it is set aside for the job
 * @param at       when it came
 * @param more     fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ReceivedStock(String id, String item, BigDecimal quantity, StockUnit unit, String lot, BigDecimal price,
        Boolean setAside, Instant at, @KeepUnknown Map<String, JsonNode> more) {

    public ReceivedStock {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(quantity, "quantity");
        more = more == null ? Map.of() : more;
    }

    /** Whether a movement was made for this. */
    public boolean moved(StockMovement m) {
        return m.id().equals(id) || m.id().startsWith(id + "/");
    }

    /**
     * The movements that put it in stock, in their order.
     *
     * @param time 1 for the first time; more when what was booked before was taken back
     * @param job  key of the job
     * @param from the delivery that it is of, for the remark
     */
    public List<StockMovement> movements(int time, String job, HandBack.Delivery from) {
        String first = time == 1 ? id : id + "/" + time;
        String note = Stream.of(from.supplier(), from.orderNo()).filter(t -> t != null && !t.isBlank()).map(String::strip)
                .collect(Collectors.joining(", "));
        List<StockMovement> made = new ArrayList<>();
        made.add(new StockMovement(first, StockMovement.Kind.RECEIVE, quantity, unit, job, lot, price, null, null,
                note.isEmpty() ? null : note, null, at, null, null, null));
        if (Boolean.TRUE.equals(setAside)) {
            made.add(new StockMovement(first + "/aside", StockMovement.Kind.RESERVE, quantity, unit, job, lot, null, null, null,
                    null, null, at, null, null, null));
        }
        return made;
    }
}

package org.copperbook.jobs.stock;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * One movement of an item. Who moved it is who saved the revision that carries it.
 *
 * @param id       told from every other movement by this; repeated, as after a broken connection, it counts once
 * @param kind     what was done
 * @param quantity how much, above zero; of an adjustment the difference, above or below zero
 * @param unit     unit meant; null for the item's own
 * @param job      key of the job it is for; needed to reserve, release and return, and null where an issue is for the shop
 * @param lot      lot, delivery or date code; null when not said
 * @param price    price per unit in the workshop's currency: paid for a delivery, in force for the rest; null when not known
 * @param ofReserved of an issue how much came out of what was reserved for the job, of a return how much is reserved
 *                 again; null to let the rules say
 * @param beyond   true when more may be promised than is there: said by somebody who was asked
 * @param note     remark, may be null
 * @param undoes   id of the movement that this one takes back; null for none
 * @param at       when
 * @param list     key of the list that was taken in with it; null for none
 * @param repriced of a delivery that gave the item another price, and of what takes it back: the price before; null for none
 * @param more     fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record StockMovement(String id, Kind kind, BigDecimal quantity, StockUnit unit, String job, String lot,
        BigDecimal price, BigDecimal ofReserved, Boolean beyond, String note, String undoes, Instant at,
        String list, Repriced repriced, @KeepUnknown Map<String, JsonNode> more) {

    /**
     * That a delivery gave its item another price.
     *
     * @param before price per unit before; null where there was none
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Repriced(BigDecimal before) {
    }

    /** What can be done with stock. */
    public enum Kind {
        /** A delivery came. */
        RECEIVE,
        /** Set aside for a job. */
        RESERVE,
        /** No longer set aside. */
        RELEASE,
        /** Taken from the shelf. */
        ISSUE,
        /** Put back on the shelf. */
        RETURN,
        /** Counted anew. */
        ADJUST
    }

    public StockMovement {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(quantity, "quantity");
        more = more == null ? Map.of() : more;
    }

    /** A new movement. */
    public static StockMovement of(Kind kind, BigDecimal quantity, String job, Instant at) {
        return new StockMovement(UUID.randomUUID().toString(), kind, quantity, null, job, null, null, null, null, null,
                null, at, null, null, null);
    }

    public StockMovement withLot(String lot) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    public StockMovement withPrice(BigDecimal price) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    public StockMovement withNote(String note) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    public StockMovement withList(String list) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    public StockMovement withUnit(StockUnit unit) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    /** The same, said by somebody who knows that more is promised then than is there. */
    public StockMovement allTheSame() {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, true, note, undoes, at, list, repriced, more);
    }

    StockMovement completed(StockUnit unit, BigDecimal price, BigDecimal ofReserved) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    StockMovement withRepriced(Repriced repriced) {
        return new StockMovement(id, kind, quantity, unit, job, lot, price, ofReserved, beyond, note, undoes, at, list, repriced, more);
    }

    /**
     * The movement that takes this one back, as it was kept; stock is then as it was before, whatever came in between. The
     * price that a delivery brought goes with it, unless the item got another one since.
     */
    public StockMovement reverse(Instant when) {
        Kind back = switch (kind) {
            case RECEIVE, ADJUST -> Kind.ADJUST;
            case RESERVE -> Kind.RELEASE;
            case RELEASE -> Kind.RESERVE;
            case ISSUE -> Kind.RETURN;
            case RETURN -> Kind.ISSUE;
        };
        // What was not taken out of the reservation must not come out of it on the way back.
        boolean moves = kind == Kind.ISSUE || kind == Kind.RETURN;
        return new StockMovement(UUID.randomUUID().toString(), back, back == Kind.ADJUST ? quantity.negate() : quantity, unit,
                job, lot, price, moves && ofReserved == null ? BigDecimal.ZERO : ofReserved, beyond, null, id, when, null,
                repriced, null);
    }
}

package org.copperbook.jobs.stock;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * One thing on the shelf. Each movement makes a new revision that carries it, so the item's history is its ledger.
 *
 * @param schema       layout version
 * @param code         the shop's own code, letters, digits, dots and hyphens; letter case does not matter
 * @param kind         what sort of thing
 * @param name         what it is, for people
 * @param size         of wire its size as the trade writes it, of parts the type or rating; may be null
 * @param grade        of round enamelled wire the grade of its enamel, 1 or 2; null when not said
 * @param shape        of wire; null when not said
 * @param unit         what it is counted in; kept for good once something was moved
 * @param place        shelf or bin; may be null
 * @param price        price per unit in the workshop's currency, of the last delivery; null when not known
 * @param reorderLevel order anew at or below this much free stock; null for no reminder
 * @param onHand       how much is on the shelf, never below zero
 * @param reserved     how much of it is set aside, by key of the job; what is not above zero is left out
 * @param movement     the movement that made this revision; null when only the description changed
 * @param retired      true when it is not kept any more
 * @param more         fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record StockItem(int schema, String code, Kind kind, String name, String size, Integer grade, Shape shape,
        StockUnit unit, String place, BigDecimal price, BigDecimal reorderLevel, BigDecimal onHand,
        Map<String, BigDecimal> reserved, StockMovement movement, Boolean retired,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;
    /** Amounts are kept in thousandths of the unit. */
    public static final int DECIMALS = 3;

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9.-]{0,39}";

    /** Sorts of things on the shelf. */
    public enum Kind { WIRE, LEAD, DIODE, SUPPRESSOR, BEARING, RESIN, SLOT_INSULATION, SLEEVING, WEDGE, TAPE, OTHER }

    /** Shape of a wire. */
    public enum Shape { ROUND, STRIP }

    public StockItem {
        kind = kind == null ? Kind.OTHER : kind;
        unit = unit == null ? StockUnit.PC : unit;
        onHand = onHand == null ? BigDecimal.ZERO : onHand;
        Map<String, BigDecimal> above = new TreeMap<>();
        if (reserved != null) {
            reserved.forEach((job, q) -> {
                if (q != null && q.signum() > 0) {
                    above.put(job, q);
                }
            });
        }
        reserved = Collections.unmodifiableMap(above);
        more = more == null ? Map.of() : more;
    }

    /** An item of which there is nothing yet. */
    public static StockItem of(String code, Kind kind, String name, StockUnit unit) {
        return new StockItem(SCHEMA, code, kind, name, null, null, null, unit, null, null, null, null, null, null, null, null);
    }

    /** Whether a text can be a code. */
    public static boolean isCode(String text) {
        return text != null && text.matches(CODE);
    }

    /**
     * The part's key.
     *
     * @throws IllegalArgumentException when the code is none
     */
    public static PartKey key(String code) {
        if (!isCode(code)) {
            throw new IllegalArgumentException("\"" + code + "\" is no code of an item");
        }
        return new PartKey(PartKind.STOCK_ITEM, code.toLowerCase(Locale.ROOT));
    }

    /** The part's key. */
    @JsonIgnore
    public PartKey key() {
        return key(code);
    }

    /** How much is set aside for a job. */
    public BigDecimal reservedFor(String job) {
        return job == null ? BigDecimal.ZERO : reserved.getOrDefault(job, BigDecimal.ZERO);
    }

    /** How much is set aside for all jobs together. */
    @JsonIgnore
    public BigDecimal reservedInAll() {
        return reserved.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** How much nobody has set aside; below zero when more was promised than is there. */
    @JsonIgnore
    public BigDecimal free() {
        return onHand.subtract(reservedInAll());
    }

    /** Whether it is time to order: free stock at or below the level, of an item still kept. */
    @JsonIgnore
    public boolean isLow() {
        return !Boolean.TRUE.equals(retired) && reorderLevel != null && free().compareTo(reorderLevel) <= 0;
    }

    /** What is on hand at the price of the last delivery; nothing when there is no price. */
    @JsonIgnore
    public Optional<BigDecimal> value() {
        return Optional.ofNullable(price).map(onHand::multiply);
    }

    /** The same item as another text describes it: its stock stays, and no movement is carried. */
    public StockItem describedAs(StockItem other) {
        return new StockItem(Math.max(schema, other.schema), other.code, other.kind, other.name, other.size, other.grade,
                other.shape, other.unit, other.place, other.price, other.reorderLevel, onHand, reserved, null, other.retired,
                other.more);
    }

    /** The same item with what it does not say taken from another: a list may lack columns. */
    public StockItem filledFrom(StockItem other) {
        return new StockItem(schema, other.code, kind == Kind.OTHER ? other.kind : kind, name == null ? other.name : name,
                size == null ? other.size : size, grade == null ? other.grade : grade, shape == null ? other.shape : shape, unit,
                place == null ? other.place : place, price == null ? other.price : price,
                reorderLevel == null ? other.reorderLevel : reorderLevel, onHand, reserved, movement,
                retired == null ? other.retired : retired, more.isEmpty() ? other.more : more);
    }

    /** The same item, not kept any more; no movement is carried. */
    public StockItem retire() {
        return new StockItem(schema, code, kind, name, size, grade, shape, unit, place, price, reorderLevel, onHand, reserved, null,
                Boolean.TRUE, more);
    }

    /** The same item at another price, null for none. */
    public StockItem priced(BigDecimal other) {
        return new StockItem(schema, code, kind, name, size, grade, shape, unit, place, other, reorderLevel, onHand, reserved,
                movement, retired, more);
    }

    /** The same item with another amount on hand and nothing set aside, as it is begun with. */
    public StockItem beginning(BigDecimal onHandThen) {
        return new StockItem(schema, code, kind, name, size, grade, shape, unit, place, price, reorderLevel, onHandThen, null,
                movement, retired, more);
    }

    StockItem moved(BigDecimal onHandNow, String job, BigDecimal reservedNow, BigDecimal priceNow, StockMovement by) {
        Map<String, BigDecimal> kept = new TreeMap<>(reserved);
        if (job != null) {
            kept.put(job, reservedNow);
        }
        return new StockItem(schema, code, kind, name, size, grade, shape, unit, place, priceNow, reorderLevel, onHandNow, kept,
                by, retired, more);
    }
}

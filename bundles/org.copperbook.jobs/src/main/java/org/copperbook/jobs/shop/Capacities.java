package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * How much work the shop can do in a week.
 *
 * @param schema layout version
 * @param trades capacity of each trade
 * @param weeks  weeks that differ from the usual one
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Capacities(int schema, List<OfTrade> trades, List<Week> weeks, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Capacities {
        trades = trades == null ? List.of() : List.copyOf(trades);
        weeks = weeks == null ? List.of() : List.copyOf(weeks);
        more = more == null ? Map.of() : more;
    }

    /** Capacities of which every week is a usual one. */
    public Capacities(int schema, List<OfTrade> trades, Map<String, JsonNode> more) {
        this(schema, trades, null, more);
    }

    /**
     * A week that differs, as for a holiday.
     *
     * @param week  a day in the week (it is the week from Monday to Sunday that holds it)
     * @param trade the trade it is about; null or blank for every trade
     * @param hours hours in that week
     * @param note  why, or null
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Week(LocalDate week, String trade, BigDecimal hours, String note,
            @KeepUnknown Map<String, JsonNode> more) {
        public Week {
            more = more == null ? Map.of() : more;
        }

        private boolean isOf(LocalDate monday) {
            return week != null && week.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).equals(monday);
        }
    }

    /**
     * What one trade can do.
     *
     * @param trade        the trade as the quotes name it
     * @param hoursPerWeek hours in a usual week, all its people together
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record OfTrade(String trade, BigDecimal hoursPerWeek, @KeepUnknown Map<String, JsonNode> more) {
        public OfTrade {
            more = more == null ? Map.of() : more;
        }
    }

    /** Hours a week of a trade; nothing when nobody has said. */
    public Optional<BigDecimal> of(String trade) {
        return trades.stream().filter(t -> t.trade() != null && t.trade().strip().equalsIgnoreCase(trade.strip()))
                .map(OfTrade::hoursPerWeek).filter(h -> h != null).findFirst();
    }

    /**
     * Hours of a trade in one week: what was said for the trade in that week, else what was said for every trade then,
     * else the usual hours; nothing when the trade has none.
     *
     * @param monday first day of the week
     */
    public Optional<BigDecimal> in(LocalDate monday, String trade) {
        Optional<BigDecimal> usual = of(trade);
        List<Week> differing = weeks.stream().filter(w -> w.hours() != null && w.isOf(monday)).toList();
        return usual.isEmpty() ? usual : differing.stream()
                .filter(w -> w.trade() != null && w.trade().strip().equalsIgnoreCase(trade.strip())).findFirst()
                .or(() -> differing.stream().filter(w -> w.trade() == null || w.trade().isBlank()).findFirst())
                .map(Week::hours).or(() -> usual);
    }

    /** The same with one trade's hours in place of what was said before. */
    public Capacities with(String trade, BigDecimal hoursPerWeek) {
        List<OfTrade> all = new java.util.ArrayList<>(trades);
        all.removeIf(t -> t.trade() != null && t.trade().strip().equalsIgnoreCase(trade.strip()));
        all.add(new OfTrade(trade.strip(), hoursPerWeek, Map.of()));
        return new Capacities(schema, all, weeks, more);
    }
}

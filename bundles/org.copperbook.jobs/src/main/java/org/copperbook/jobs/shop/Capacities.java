package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
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
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Capacities(int schema, List<OfTrade> trades, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Capacities {
        trades = trades == null ? List.of() : List.copyOf(trades);
        more = more == null ? Map.of() : more;
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

    /** The same with one trade's hours in place of what was said before. */
    public Capacities with(String trade, BigDecimal hoursPerWeek) {
        List<OfTrade> all = new java.util.ArrayList<>(trades);
        all.removeIf(t -> t.trade() != null && t.trade().strip().equalsIgnoreCase(trade.strip()));
        all.add(new OfTrade(trade.strip(), hoursPerWeek, Map.of()));
        return new Capacities(schema, all, more);
    }
}

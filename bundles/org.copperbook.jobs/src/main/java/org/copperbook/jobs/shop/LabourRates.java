package org.copperbook.jobs.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * What an hour of each trade costs before mark-up, in the shop's currency. A new rate stands beside the older ones, which are kept.
 *
 * @param schema layout version
 * @param rates  rates in any order
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record LabourRates(int schema, List<Rate> rates, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public LabourRates {
        rates = rates == null ? List.of() : List.copyOf(rates);
        more = more == null ? Map.of() : more;
    }

    /** No rates at all. */
    public static LabourRates none() {
        return new LabourRates(SCHEMA, List.of(), Map.of());
    }

    /**
     * One rate.
     *
     * @param trade     the trade as the quotes name it
     * @param perHour   price of an hour in the shop's currency, 0 or more
     * @param validFrom first day it counts; null for since ever
     * @param note      remark, or null
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Rate(String trade, BigDecimal perHour, LocalDate validFrom, String note,
            @KeepUnknown Map<String, JsonNode> more) {
        public Rate {
            more = more == null ? Map.of() : more;
        }
    }

    /** The rate of a trade that counts on a day: the one with the latest first day not after it. Letter case does not matter. */
    public Optional<Rate> on(String trade, LocalDate day) {
        String wanted = trade == null ? "" : trade.strip();
        return rates.stream().filter(r -> r.trade() != null && r.perHour() != null
                        && r.trade().strip().equalsIgnoreCase(wanted))
                .filter(r -> r.validFrom() == null || !r.validFrom().isAfter(day))
                .max(Comparator.comparing(r -> r.validFrom() == null ? LocalDate.MIN : r.validFrom()));
    }

    /** The price of an hour of a trade on a day, in the shop's currency; nothing when nobody has said. */
    public Optional<BigDecimal> perHour(String trade, LocalDate day) {
        return on(trade, day).map(Rate::perHour);
    }
}

package org.copperbook.jobs.work;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * Hours worked on a job.
 *
 * @param schema  layout version
 * @param entries what was worked, in the order in which it was written down
 * @param running who has begun and not stopped yet
 * @param more    fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Hours(int schema, List<Entry> entries, List<Running> running, @KeepUnknown Map<String, JsonNode> more)
        implements Part {

    public static final int SCHEMA = 1;

    public Hours {
        entries = entries == null ? List.of() : List.copyOf(entries);
        running = running == null ? List.of() : List.copyOf(running);
        more = more == null ? Map.of() : more;
    }

    /**
     * Hours of one person at one trade on one day.
     *
     * @param who   key of the person; null when not said
     * @param trade trade as the quotes name it; null when not said
     * @param date  the day
     * @param hours how many; below zero to correct an entry that is settled already
     * @param note  remark, may be null
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Entry(String who, String trade, LocalDate date, BigDecimal hours, String note,
            @KeepUnknown Map<String, JsonNode> more) {
        public Entry {
            more = more == null ? Map.of() : more;
        }
    }

    /** Who works now: since when, at which trade. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Running(String who, String trade, Instant since, @KeepUnknown Map<String, JsonNode> more) {
        public Running {
            more = more == null ? Map.of() : more;
        }
    }

    /** Hours by trade, in any letter case; what names no trade stands under "". What has no hours is left out. */
    public Map<String, BigDecimal> byTrade() {
        Map<String, BigDecimal> sums = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (Entry e : entries) {
            if (e.hours() != null) {
                sums.merge(e.trade() == null ? "" : e.trade().strip(), e.hours(), BigDecimal::add);
            }
        }
        return sums;
    }
}

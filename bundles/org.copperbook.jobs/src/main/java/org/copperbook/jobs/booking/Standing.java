package org.copperbook.jobs.booking;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.copperbook.jobs.Part;

/**
 * Where the job stands apart from its work: waiting for something, or closed.
 *
 * @param schema  layout version
 * @param waiting what the job waits for, or null
 * @param closure how it ended, or null while it is open
 * @param more    fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Standing(int schema, Waiting waiting, Closure closure, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Standing {
        more = more == null ? Map.of() : more;
    }

    /** A job that waits: what for (parts, customer, outside work), since when, and why. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Waiting(WaitingFor waitingFor, Instant since, String reason, @KeepUnknown Map<String, JsonNode> more) {
        public Waiting {
            more = more == null ? Map.of() : more;
        }
    }

    /** What a job can wait for. */
    public enum WaitingFor { PARTS, CUSTOMER, OUTSIDE_WORK, OTHER }

    /**
     * The end of a job. A cancelled or merged job keeps its number, marked void.
     *
     * @param how    how it ended
     * @param reason why; required when cancelled or merged
     * @param into   number of the job it was merged into
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Closure(How how, String reason, String into, Instant at, String by, @KeepUnknown Map<String, JsonNode> more) {
        public Closure {
            if ((how == How.CANCELLED || how == How.MERGED) && (reason == null || reason.isBlank())) {
                throw new IllegalArgumentException("a job is " + how.name().toLowerCase(java.util.Locale.ROOT)
                        + " only with a reason");
            }
            more = more == null ? Map.of() : more;
        }
    }

    /** How a job ends. */
    public enum How { COLLECTED, DECLINED, SCRAPPED, CANCELLED, MERGED }

    /** Whether the job has ended. A closure of which only the reason was given yet does not end it. */
    public boolean isClosed() {
        return closure != null && closure.how() != null;
    }

    /** Whether the number is void (cancelled or merged). */
    public boolean isVoid() {
        return closure != null && (closure.how() == How.CANCELLED || closure.how() == How.MERGED);
    }
}

package org.copperbook.jobs.signoff;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.seal.Seal;

/**
 * Signatures, concessions, judgements, reopenings and acknowledged cautions of a job, in the order they happened.
 *
 * @param schema      layout version
 * @param signatures  signatures at hold points
 * @param concessions signed concessions
 * @param judgements  named judgements where no limit is set
 * @param reopenings  hold points reopened by a failure
 * @param cautions    cautions acknowledged by name
 * @param more        fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record SignOffs(int schema, List<Signature> signatures, List<Concession> concessions,
        List<Judgement> judgements, List<Reopening> reopenings, List<CautionAcknowledged> cautions,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public SignOffs {
        signatures = signatures == null ? List.of() : List.copyOf(signatures);
        concessions = concessions == null ? List.of() : List.copyOf(concessions);
        judgements = judgements == null ? List.of() : List.copyOf(judgements);
        reopenings = reopenings == null ? List.of() : List.copyOf(reopenings);
        cautions = cautions == null ? List.of() : List.copyOf(cautions);
        more = more == null ? Map.of() : more;
    }

    /**
     * A signature at a hold point by a person in a role.
     *
     * @param seal what the record was when it was released; null at other hold points and in records of older versions
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Signature(HoldPoint point, String by, Role role, Instant at, String note, Seal seal,
            @KeepUnknown Map<String, JsonNode> more) {
        public Signature {
            more = more == null ? Map.of() : more;
        }
    }

    /** A signed concession: the verdict it is about (its id), the reason, who and when. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Concession(String verdict, String reason, String by, Role role, Instant at,
            @KeepUnknown Map<String, JsonNode> more) {
        public Concession {
            more = more == null ? Map.of() : more;
        }
    }

    /** A named judgement on a verdict for which no limit is set. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Judgement(String verdict, boolean acceptable, String reason, String by, Role role, Instant at,
            @KeepUnknown Map<String, JsonNode> more) {
        public Judgement {
            more = more == null ? Map.of() : more;
        }
    }

    /** A hold point reopened: why, by which failed verdict or attempt, when. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Reopening(HoldPoint point, String because, Instant at, String by,
            @KeepUnknown Map<String, JsonNode> more) {
        public Reopening {
            more = more == null ? Map.of() : more;
        }
    }

    /** A caution acknowledged by name before a step that can hurt: step id, who, when. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record CautionAcknowledged(String step, String by, Instant at,
            @KeepUnknown Map<String, JsonNode> more) {
        public CautionAcknowledged {
            more = more == null ? Map.of() : more;
        }
    }
}

package org.copperbook.jobs.faults;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * What was told and tried while looking for the fault.
 *
 * @param schema   layout version
 * @param symptoms symptoms told or seen, by the names in the fault tables
 * @param answers  outcome by test, both by the names in the fault tables; it goes before what the readings say
 * @param note     remark
 * @param more     fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record FaultFinding(int schema, List<String> symptoms, Map<String, String> answers, String note,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** The test whose outcomes are the symptoms. */
    public static final String SYMPTOMS = "complaint";

    public FaultFinding {
        symptoms = symptoms == null ? List.of() : List.copyOf(symptoms);
        answers = answers == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        more = more == null ? Map.of() : more;
    }

    public static FaultFinding none() {
        return new FaultFinding(SCHEMA, List.of(), Map.of(), null, Map.of());
    }
}

package org.copperbook.jobs.process;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.runup.SurgeTest;

/**
 * The tests of the new windings before they are impregnated. Every attempt stays. Coil groups read while winding stand
 * in the record of the new winding itself; both count.
 *
 * @param schema     layout version
 * @param readings   resistance and insulation readings
 * @param surges     surge comparison tests
 * @param polarities tests of pole polarity and phase sequence
 * @param note       remark
 * @param more       fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProcessTests(int schema, List<Reading> readings, List<SurgeTest> surges, List<PolarityTest> polarities,
        String note, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public ProcessTests {
        readings = readings == null ? List.of() : List.copyOf(readings);
        surges = surges == null ? List.of() : List.copyOf(surges);
        polarities = polarities == null ? List.of() : List.copyOf(polarities);
        more = more == null ? Map.of() : more;
    }
}

package org.copperbook.jobs.runup;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.copperbook.jobs.winding.WindingRole;

/**
 * One surge comparison test.
 *
 * @param winding   winding under test
 * @param pair      phases compared ("U-V")
 * @param peakVolts peak volts, V
 * @param levelRule rule the level comes from
 * @param alike     true when the traces agree, false when they differ, null while not done
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record SurgeTest(WindingRole winding, String pair, Double peakVolts, String levelRule, Boolean alike,
        String instrument, String by, String cautionsBy, Instant at, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    public SurgeTest {
        more = more == null ? Map.of() : more;
    }
}

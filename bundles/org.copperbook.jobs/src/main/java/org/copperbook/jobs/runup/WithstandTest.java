package org.copperbook.jobs.runup;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.copperbook.jobs.winding.WindingRole;

/**
 * One withstand (hipot) test.
 *
 * @param winding    winding under test
 * @param direct     true for dc, false for ac
 * @param volts      test volts, V (rms for ac)
 * @param seconds    seconds held at full voltage
 * @param held       true when it held, false when it failed, null while not done
 * @param attempt    1 for the first test of this winding after this work
 * @param newWinding true when the winding was completely rewound
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record WithstandTest(WindingRole winding, Boolean direct, Double volts, Double seconds, Boolean held,
        Integer attempt, Boolean newWinding, String instrument, String by, String cautionsBy, Instant at,
        String note, @KeepUnknown Map<String, JsonNode> more) {

    public WithstandTest {
        more = more == null ? Map.of() : more;
    }
}

package org.copperbook.jobs.process;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.winding.WindingRole;

/**
 * One test of a winding's pole polarity or phase sequence with the winding in place.
 *
 * @param winding    winding under test
 * @param method     how it was seen; null when not stated
 * @param seen       what was seen, "N S N S" or "U V W"
 * @param right      true when it is as wanted, false when not, null while not judged
 * @param instrument id in the instrument register, if one was used
 * @param by         person key
 * @param at         when
 * @param note       remark
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record PolarityTest(WindingRole winding, Method method, String seen, Boolean right, String instrument, String by,
        Instant at, String note, @KeepUnknown Map<String, JsonNode> more) {

    /** Direct current and a compass, direct current and a kick on a voltmeter, or a rotor turned by low volts. */
    public enum Method { COMPASS, VOLTMETER_KICK, TEST_ROTOR }

    public PolarityTest {
        more = more == null ? Map.of() : more;
    }
}

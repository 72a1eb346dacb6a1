package org.copperbook.jobs.winding;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.nameplate.Nameplate;

/**
 * A winding card from the workshop's old records: what it says of the machine and of its winding. It belongs to no job
 * and is kept so that the winding can be found again.
 *
 * @param schema  layout version
 * @param card    number or name of the card, or null
 * @param date    date on the card as it was written, or null
 * @param plate   what it says of the machine
 * @param winding what it says of the winding
 * @param source  file it was taken in from
 * @param line    row of that file, from 1
 * @param more    fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record OldCard(int schema, String card, String date, Nameplate plate, WindingData winding, String source,
        Integer line, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public OldCard {
        more = more == null ? Map.of() : more;
    }
}

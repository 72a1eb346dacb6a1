package org.copperbook.jobs;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A photo kept with a part.
 *
 * @param hash    SHA-256 of the original bytes, lower-case hex: the key under which they are kept unchanged
 * @param name    original file name
 * @param caption what it shows
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record PhotoRef(String hash, String name, String caption, @KeepUnknown Map<String, JsonNode> more) {

    public PhotoRef {
        more = more == null ? Map.of() : more;
    }
}

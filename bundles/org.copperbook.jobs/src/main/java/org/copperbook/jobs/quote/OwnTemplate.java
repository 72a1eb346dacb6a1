package org.copperbook.jobs.quote;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * The workbook that the workshop has its quotes written into.
 *
 * @param schema layout version
 * @param kept   key under which its bytes are kept with the photos; null for the workbook that ships
 * @param name   name of the file as it was chosen, or null
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record OwnTemplate(int schema, String kept, String name, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public OwnTemplate {
        more = more == null ? Map.of() : more;
    }

    /** Quotes are written as they ship. */
    public static OwnTemplate none() {
        return new OwnTemplate(SCHEMA, null, null, Map.of());
    }

    /** A file whose bytes are kept with the photos, under their SHA-256 in lower-case hex. */
    public static OwnTemplate of(String name, byte[] bytes) {
        try {
            return new OwnTemplate(SCHEMA, HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)), name,
                    Map.of());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether there is one. */
    public boolean isThere() {
        return kept != null && !kept.isBlank();
    }
}

package org.copperbook.jobs.seal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * Release workbooks that were written from this job, each with what it says and of which record, so that a file that
 * comes back can be held against the store.
 *
 * @param schema layout version
 * @param copies in the order written; the same contents stand here once
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record IssuedCopies(int schema, List<Copy> copies, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public IssuedCopies {
        copies = copies == null ? List.of() : List.copyOf(copies);
        more = more == null ? Map.of() : more;
    }

    /** Before anything was written. */
    public static IssuedCopies none() {
        return new IssuedCopies(SCHEMA, null, null);
    }

    /**
     * One workbook.
     *
     * @param fileName    name it was first written under
     * @param fingerprint seal of the record it shows
     * @param digest      SHA-256 of everything its cells and pictures say
     * @param at          when
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Copy(String fileName, String fingerprint, String digest, Instant at,
            @KeepUnknown Map<String, JsonNode> more) {
        public Copy {
            more = more == null ? Map.of() : more;
        }
    }

    /** Whether a workbook with these contents was written. */
    public boolean holds(String digest) {
        return copies.stream().anyMatch(c -> c.digest().equals(digest));
    }

    /** Whether any workbook of this record was written. */
    public boolean knows(String fingerprint) {
        return copies.stream().anyMatch(c -> c.fingerprint().equals(fingerprint));
    }

    /** With one more copy. */
    public IssuedCopies with(Copy copy) {
        List<Copy> next = new ArrayList<>(copies);
        next.add(copy);
        return new IssuedCopies(schema, next, more);
    }
}

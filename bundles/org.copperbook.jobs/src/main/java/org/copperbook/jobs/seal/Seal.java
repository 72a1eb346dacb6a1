package org.copperbook.jobs.seal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.signoff.SignOffs;

/**
 * Fingerprint of the technical record of a job: nameplate, inspection, fault finding, windings, core, impregnation, rectifier set,
 * run-up, and the concessions and judgements that settle their verdicts. A release signature carries the seal of what
 * was signed; a record that no longer has this seal is not the record that was released. What the office goes on
 * writing after the release (booking, quotes, hand-back) is not sealed.
 *
 * @param fingerprint SHA-256 in lower-case hex over number and parts
 * @param parts       SHA-256 of each sealed part under its key, and of the decisions under "decisions"
 * @param more        fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Seal(String fingerprint, Map<String, String> parts, @KeepUnknown Map<String, JsonNode> more) {

    /** Key of the concessions and judgements among the parts; no part has this key. */
    public static final String DECISIONS = "decisions";

    private static final Set<PartKind> SEALED = Collections.unmodifiableSet(EnumSet.of(PartKind.NAMEPLATE,
            PartKind.INSPECTION, PartKind.FAULT_FINDING, PartKind.WINDING, PartKind.CORE, PartKind.IN_PROCESS,
            PartKind.IMPREGNATION, PartKind.RECTIFIER, PartKind.RUN_UP));

    /** Characters of a fingerprint that people read aloud: 16 hex digits, 64 bits. */
    private static final int SHORT = 16;

    public Seal {
        parts = parts == null ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(parts));
        more = more == null ? Map.of() : more;
    }

    /** The seal of a job as it stands. */
    public static Seal of(Job job) {
        PartJson json = new PartJson();
        Map<String, String> parts = new TreeMap<>();
        for (PartKey key : job.parts().keySet()) {
            if (covers(key)) {
                parts.put(key.toString(), Canonical.digest(json.tree(job.parts().get(key))));
            }
        }
        job.signOffs().ifPresent(s -> decisions(s, json, parts));
        StringBuilder all = new StringBuilder(job.number()).append('\n');
        parts.forEach((key, digest) -> all.append(key).append(' ').append(digest).append('\n'));
        return new Seal(Canonical.digest(all.toString()), parts, Map.of());
    }

    private static void decisions(SignOffs s, PartJson json, Map<String, String> parts) {
        if (!s.concessions().isEmpty() || !s.judgements().isEmpty()) {
            SignOffs only = new SignOffs(s.schema(), null, s.concessions(), s.judgements(), null, null, null);
            parts.put(DECISIONS, Canonical.digest(json.tree(only)));
        }
    }

    /** Whether a part of this kind is under the seal. */
    public static boolean covers(PartKey key) {
        return SEALED.contains(key.kind());
    }

    /** Keys of the parts that differ between two seals: changed, added or gone. */
    public List<String> differences(Seal other) {
        Set<String> keys = new TreeSet<>(parts.keySet());
        keys.addAll(other.parts.keySet());
        List<String> different = new ArrayList<>();
        for (String key : keys) {
            if (!Objects.equals(parts.get(key), other.parts.get(key))) {
                different.add(key);
            }
        }
        return different;
    }

    /** The fingerprint as people compare it: its first 16 digits in groups of four. */
    public String shown() {
        return shown(fingerprint);
    }

    /** A fingerprint as people compare it: its first 16 digits in groups of four. */
    public static String shown(String fingerprint) {
        String head = fingerprint.substring(0, Math.min(SHORT, fingerprint.length()));
        return head.replaceAll("(.{4})(?=.)", "$1 ");
    }
}

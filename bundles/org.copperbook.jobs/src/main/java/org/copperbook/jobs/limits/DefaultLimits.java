package org.copperbook.jobs.limits;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/** The limit profile that ships with the product; a readable data file beside this class. */
public final class DefaultLimits {

    private static final String FILE = "default-limits.json";

    private DefaultLimits() {
    }

    /** Reads the shipped profile. */
    public static LimitProfile load(PartJson json) {
        try (InputStream in = DefaultLimits.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the shipped limit profile " + FILE + " is missing from its bundle");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return (LimitProfile) json.read(PartKey.of(PartKind.LIMITS), text);
        } catch (IOException | BadRecordException e) {
            throw new IllegalStateException("the shipped limit profile cannot be read", e);
        }
    }
}

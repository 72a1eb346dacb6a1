package org.copperbook.store.jdbc;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.copperbook.store.Revision;

/**
 * The hash that links a revision to the one before.
 *
 * <p>SHA-256 over the fields as UTF-8, each after its length in bytes as four bytes big-endian, so that no two lists
 * of fields run together to the same text: the mark of this layout, previous hash, job id, job number, part, revision,
 * time saved, who, why, JSON. The sequence is left out: order is held by the previous hash, and so a link that was
 * moved still agrees with itself and can be told from one that was altered.
 */
public final class Chain {

    /** Previous hash of the first link. */
    public static final String START = "0".repeat(64);

    private static final String LAYOUT = "copperbook-revision-1";

    private Chain() {
    }

    /**
     * The hash of a link.
     *
     * @param number the job's number, empty for the shop
     */
    public static String hash(String previousHash, String jobId, String number, String part, int revision,
            String savedAt, String who, String why, String json) {
        MessageDigest sha = sha256();
        for (String field : new String[] {LAYOUT, previousHash, jobId, number, part, Integer.toString(revision),
            savedAt, who, why, json}) {
            byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
            sha.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
            sha.update(bytes);
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    /** The hash a kept revision should have. */
    static String hash(Revision r, String number) {
        return hash(r.previousHash(), r.jobId(), number, r.part(), r.revision(), r.savedAt().toString(), r.who(),
                r.why(), r.json());
    }

    /** SHA-256 of bytes as they are, lower-case hex. */
    static String hash(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

package org.copperbook.store.people;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Objects;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * What is kept of a secret: a salted hash, with the parameters it was made with, so that these can be raised later.
 *
 * @param algorithm  name of the key derivation as the Java platform has it
 * @param iterations how often it is applied, at least 1
 * @param salt       random bytes of this account, in hex
 * @param hash       the result, in hex
 */
public record SecretHash(String algorithm, int iterations, String salt, String hash) {

    /** PBKDF2 of RFC 8018 with HMAC-SHA-256; every Java platform has it. */
    public static final String ALGORITHM = "PBKDF2WithHmacSHA256";

    /** OWASP, Password Storage Cheat Sheet: 600,000 iterations for PBKDF2 with HMAC-SHA-256. Value from memory. */
    public static final int ITERATIONS = 600_000;

    private static final int SALT_BYTES = 16;
    private static final int HASH_BITS = 256;

    public SecretHash {
        Objects.requireNonNull(algorithm, "algorithm");
        if (iterations < 1) {
            throw new IllegalArgumentException("a secret is hashed at least once, not " + iterations + " times");
        }
    }

    /** The hash of a secret under a new salt and today's parameters. The caller wipes the secret. */
    public static SecretHash of(char[] secret) {
        byte[] salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        return of(secret, ITERATIONS, salt);
    }

    /** The hash with given parameters. */
    public static SecretHash of(char[] secret, int iterations, byte[] salt) {
        return new SecretHash(ALGORITHM, iterations, HexFormat.of().formatHex(salt),
                HexFormat.of().formatHex(derive(ALGORITHM, secret, iterations, salt)));
    }

    /** Whether this is the hash of a secret; takes as long for a wrong one. The caller wipes the secret. */
    public boolean matches(char[] secret) {
        byte[] kept = HexFormat.of().parseHex(hash);
        return MessageDigest.isEqual(kept, derive(algorithm, secret, iterations, HexFormat.of().parseHex(salt)));
    }

    /** Whether it was made with weaker parameters than a new one would be. */
    public boolean outdated() {
        return !ALGORITHM.equals(algorithm) || iterations < ITERATIONS;
    }

    /** Says nothing of salt and hash, so that they get into no log. */
    @Override
    public String toString() {
        return "SecretHash[" + algorithm + ", " + iterations + "]";
    }

    private static byte[] derive(String algorithm, char[] secret, int iterations, byte[] salt) {
        char[] own = Arrays.copyOf(secret, secret.length);
        PBEKeySpec spec = new PBEKeySpec(own, salt, iterations, HASH_BITS);
        try {
            return SecretKeyFactory.getInstance(algorithm).generateSecret(spec).getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java platform lacks " + algorithm, e);
        } finally {
            spec.clearPassword();
            Arrays.fill(own, '\0');
        }
    }
}

package org.copperbook.store.jdbc;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Text under a key of its own: AES-256 in Galois/Counter Mode (NIST SP 800-38D) with a random 96-bit nonce for every
 * text and the owner's key as additional data, so that a text cannot be put under another owner.
 */
final class PersonalCipher {

    private static final String MARK = "aes:";
    private static final int KEY_BYTES = 32;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final int NAME_BYTES = 8;

    /** Looking one up costs more than opening a name with it; it is made ready anew for every text. */
    private static final ThreadLocal<Cipher> CIPHER = ThreadLocal.withInitial(() -> {
        try {
            return Cipher.getInstance("AES/GCM/NoPadding");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has AES in GCM", e);
        }
    });

    private final SecureRandom random = new SecureRandom();

    /** A new random key as text. */
    String newSecret() {
        byte[] key = new byte[KEY_BYTES];
        random.nextBytes(key);
        return Base64.getEncoder().encodeToString(key);
    }

    /** Whether a text is one that {@link #close} made. */
    static boolean isClosed(String text) {
        return text.startsWith(MARK);
    }

    String close(String secret, String owner, String text) {
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        try {
            byte[] closed = cipher(Cipher.ENCRYPT_MODE, secret, owner, nonce)
                    .doFinal(text.getBytes(StandardCharsets.UTF_8));
            return MARK + Base64.getEncoder().encodeToString(
                    ByteBuffer.allocate(nonce.length + closed.length).put(nonce).put(closed).array());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has AES in GCM", e);
        }
    }

    /**
     * The text again.
     *
     * @throws GeneralSecurityException when it was altered, or belongs to another key or owner
     */
    String open(String secret, String owner, String closed) throws GeneralSecurityException {
        try {
            ByteBuffer all = ByteBuffer.wrap(Base64.getDecoder().decode(closed.substring(MARK.length())));
            byte[] nonce = new byte[NONCE_BYTES];
            all.get(nonce);
            byte[] rest = new byte[all.remaining()];
            all.get(rest);
            return new String(cipher(Cipher.DECRYPT_MODE, secret, owner, nonce).doFinal(rest), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException | BufferUnderflowException e) {
            throw new GeneralSecurityException("not a text under a key", e);
        }
    }

    /** HMAC-SHA256 of a text, by which its equals are found without opening them. */
    static String lookup(String secret, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(Base64.getDecoder().decode(secret), "HmacSHA256"));
            return Base64.getEncoder().encodeToString(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has HMAC-SHA256", e);
        }
    }

    /** A new key for a name: random, so that it says nothing of what it stands for. */
    String newName() {
        byte[] name = new byte[NAME_BYTES];
        random.nextBytes(name);
        return HexFormat.of().formatHex(name);
    }

    private static Cipher cipher(int mode, String secret, String owner, byte[] nonce) throws GeneralSecurityException {
        Cipher cipher = CIPHER.get();
        cipher.init(mode, new SecretKeySpec(Base64.getDecoder().decode(secret), "AES"),
                new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(owner.getBytes(StandardCharsets.UTF_8));
        return cipher;
    }
}

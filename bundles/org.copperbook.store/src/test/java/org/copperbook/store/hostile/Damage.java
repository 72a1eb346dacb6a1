package org.copperbook.store.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;

/** Damages bytes as a bad disk, a cut-off transfer and somebody with bad intentions would. */
final class Damage {

    private static final String[] POISON = {"'; DROP TABLE revision; --", "\" OR 1=1 --", "../../../etc/passwd",
        "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]>", "=HYPERLINK(\"http://x\")", "\u0000", "\ud800",
        "1e999999999", "-1e308", "99999999999999999999999999999", "1E-2147483648", "NaN", "null", "{", "[", "}", "]",
        "\"", "[[[[[[[[", "{\"a\":", "%s%n", "\\u0000", "private:n-0000000000000000", "aes:AAAA", "true", "-0", "\r\n"};

    private final Random random;

    Damage(long seed) {
        random = new Random(seed);
    }

    /** A damaged copy. */
    byte[] of(byte[] sound) {
        byte[] bytes = sound.clone();
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times && bytes.length > 0; i++) {
            bytes = once(bytes);
        }
        return bytes;
    }

    private byte[] once(byte[] b) {
        int at = random.nextInt(b.length);
        return switch (random.nextInt(9)) {
            case 0 -> flipped(b, at);
            case 1 -> java.util.Arrays.copyOf(b, at);
            case 2 -> spliced(b, at, at, POISON[random.nextInt(POISON.length)].getBytes(StandardCharsets.UTF_8));
            case 3 -> spliced(b, at, Math.min(b.length, at + 1 + random.nextInt(40)), new byte[0]);
            case 4 -> spliced(b, at, at, java.util.Arrays.copyOfRange(b, at, Math.min(b.length, at + random.nextInt(400))));
            case 5 -> number(b, at);
            case 6 -> spliced(b, at, at, "[".repeat(1 + random.nextInt(3000)).getBytes(StandardCharsets.UTF_8));
            case 7 -> noise(b, at);
            default -> string(b, at);
        };
    }

    private byte[] flipped(byte[] b, int at) {
        b[at] ^= (byte) (1 << random.nextInt(8));
        return b;
    }

    private byte[] noise(byte[] b, int at) {
        for (int i = at; i < Math.min(b.length, at + 16); i++) {
            b[i] = (byte) random.nextInt();
        }
        return b;
    }

    /** Puts an impossible number in the place of the next one. */
    private byte[] number(byte[] b, int at) {
        int from = at;
        while (from < b.length && !Character.isDigit(b[from])) {
            from++;
        }
        int to = from;
        while (to < b.length && (Character.isDigit(b[to]) || b[to] == '.')) {
            to++;
        }
        return spliced(b, from, to, POISON[7 + random.nextInt(5)].getBytes(StandardCharsets.UTF_8));
    }

    /** Puts poison into the next text. */
    private byte[] string(byte[] b, int at) {
        int from = at;
        while (from < b.length && b[from] != '"') {
            from++;
        }
        int in = Math.min(b.length, from + 1);
        String poison = POISON[random.nextInt(POISON.length)].replace("\\", "\\\\").replace("\"", "\\\"");
        return spliced(b, in, in, poison.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] spliced(byte[] b, int from, int to, byte[] in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(b, 0, from);
        out.writeBytes(in);
        out.write(b, to, b.length - to);
        return out.toByteArray();
    }
}

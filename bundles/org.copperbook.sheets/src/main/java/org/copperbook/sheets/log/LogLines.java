package org.copperbook.sheets.log;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** The lines of a file as bytes, one after the other, hashed on the way. A line may end with LF, CR LF or CR. */
final class LogLines implements AutoCloseable {

    /** A longer line is not one of a logger: one forgotten line end must not fill the memory. */
    static final int LONGEST = 64 * 1024;

    private final InputStream in;
    private final MessageDigest digest;
    private byte[] buffer = new byte[1 << 17];
    private int at;
    private int filled;
    private boolean ended;
    private boolean afterCr;
    private long passed;
    private int start;
    private int end;

    LogLines(Path file) throws IOException {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
        in = Files.newInputStream(file);
    }

    /** Goes to the next line; false at the end of the file. */
    boolean next() throws IOException, UnreadableLogException {
        start = at;
        while (true) {
            for (int i = at; i < filled; i++) {
                byte b = buffer[i];
                if (b == '\n' || b == '\r') {
                    if (b == '\n' && afterCr && i == start) {
                        afterCr = false;
                        start = i + 1;
                        continue;
                    }
                    end = i;
                    at = i + 1;
                    afterCr = b == '\r';
                    return true;
                }
                afterCr = false;
            }
            at = filled;
            if (ended) {
                end = filled;
                return end > start;
            }
            fill();
        }
    }

    private void fill() throws IOException, UnreadableLogException {
        int kept = filled - start;
        if (kept > LONGEST) {
            throw new UnreadableLogException(LogWords.say("line.long", LONGEST));
        }
        System.arraycopy(buffer, start, buffer, 0, kept);
        int read = in.read(buffer, kept, buffer.length - kept);
        start = 0;
        at = kept;
        filled = kept + Math.max(0, read);
        ended = read < 0;
        if (read > 0) {
            digest.update(buffer, kept, read);
            passed += read;
        }
    }

    byte[] bytes() {
        return buffer;
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    /** Bytes read so far. */
    long passed() {
        return passed;
    }

    /** The line as text; column titles may hold any letters, one byte each when they are not UTF-8. */
    String text() {
        return LogText.decode(Arrays.copyOfRange(buffer, start, end));
    }

    /** SHA-256 of the whole file; meaningful at its end. */
    String hash() {
        return HexFormat.of().formatHex(digest.digest());
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}

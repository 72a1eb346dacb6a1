package org.copperbook.batch;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Where a secret comes from: typed at a prompt, or the first line of a file or of the standard input. Never the command
 * line, which everybody on the machine can read.
 */
final class SecretLine {

    /** More than any secret in bytes. */
    private static final int LONGEST = 4096;
    private static final String STANDARD_INPUT = "-";

    private SecretLine() {
    }

    /**
     * The secret; the caller wipes it.
     *
     * @param file file that holds it, "-" for the standard input, null to ask for it
     * @param name name of the person, for the prompt
     */
    static char[] read(Path file, String name) {
        if (file == null) {
            return asked(name);
        }
        try (InputStream in = file.toString().equals(STANDARD_INPUT) ? System.in : Files.newInputStream(file)) {
            return firstLine(in);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
    }

    private static char[] asked(String name) {
        Console console = System.console();
        char[] typed = console == null ? null : console.readPassword("%s", BatchText.of("as.prompt", name));
        if (typed == null) {
            throw new BadUse(BatchText.of("as.no-secret"));
        }
        return typed;
    }

    private static char[] firstLine(InputStream in) throws IOException {
        byte[] bytes = new byte[LONGEST];
        int length = 0;
        for (int b = in.read(); b >= 0 && b != '\n' && b != '\r' && length < LONGEST; b = in.read()) {
            bytes[length++] = (byte) b;
        }
        CharBuffer text = StandardCharsets.UTF_8.decode(ByteBuffer.wrap(bytes, 0, length));
        char[] secret = new char[text.remaining()];
        text.get(secret);
        Arrays.fill(text.array(), '\0');
        Arrays.fill(bytes, (byte) 0);
        return secret;
    }
}

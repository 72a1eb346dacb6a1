package org.copperbook.store.sqlite;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a program asked of the system for one file, in the order of the asking. */
sealed interface DiskEvent {

    /** Bytes put at an offset; they may be lost until the file is forced. */
    record Write(Path file, long offset, byte[] bytes) implements DiskEvent {
    }

    /** The file was cut or lengthened. */
    record Length(Path file, long length) implements DiskEvent {
    }

    /** The system answered that all that was written to the file has reached the disk. */
    record Forced(Path file) implements DiskEvent {
    }

    /** The program's output: saves it acknowledged. */
    record Said(String text) implements DiskEvent {
    }

    /**
     * Reads what strace noted with {@code -f -y -xx}, line by line, since a trace is some hundred times as long as what
     * was written. A call that was interrupted by another thread's counts from its beginning, except forcing a file,
     * which counts from its end.
     */
    static void read(Path trace, Path said, Consumer<DiskEvent> to) throws IOException {
        Pattern write = Pattern.compile("\\d+ +(pwrite64|write)\\(\\d+<([^>]*)>, \"([^\"]*)\", \\d+(?:, (\\d+))?.*",
                Pattern.DOTALL);
        Pattern length = Pattern.compile("\\d+ +ftruncate\\(\\d+<([^>]*)>, (\\d+).*");
        Pattern forced = Pattern.compile("(\\d+) +(?:fsync|fdatasync)\\(\\d+<([^>]*)>(\\) += 0| <unfinished.*)");
        Pattern resumed = Pattern.compile("(\\d+) +<\\.\\.\\. (?:fsync|fdatasync) resumed>\\) += 0");
        java.util.Map<String, Path> forcing = new java.util.HashMap<>();
        try (BufferedReader in = Files.newBufferedReader(trace, StandardCharsets.US_ASCII)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                Matcher m = write.matcher(line);
                if (m.matches()) {
                    Path file = path(m.group(2));
                    byte[] bytes = bytes(m.group(3));
                    to.accept(file.equals(said) ? new Said(new String(bytes, StandardCharsets.UTF_8))
                            : new Write(file, Long.parseLong(m.group(4)), bytes));
                    continue;
                }
                m = length.matcher(line);
                if (m.matches()) {
                    to.accept(new Length(path(m.group(1)), Long.parseLong(m.group(2))));
                    continue;
                }
                m = forced.matcher(line);
                if (m.matches()) {
                    if (m.group(3).startsWith(")")) {
                        to.accept(new Forced(path(m.group(2))));
                    } else {
                        forcing.put(m.group(1), path(m.group(2)));
                    }
                    continue;
                }
                m = resumed.matcher(line);
                if (m.matches()) {
                    to.accept(new Forced(forcing.remove(m.group(1))));
                }
            }
        }
    }

    private static Path path(String hex) {
        return Path.of(hex.contains("\\x") ? new String(bytes(hex), StandardCharsets.UTF_8) : hex);
    }

    /** Bytes written as backslash, x and two digits each. */
    private static byte[] bytes(String hex) {
        byte[] out = new byte[hex.length() / 4];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) (Character.digit(hex.charAt(4 * i + 2), 16) << 4 | Character.digit(hex.charAt(4 * i + 3), 16));
        }
        return out;
    }
}

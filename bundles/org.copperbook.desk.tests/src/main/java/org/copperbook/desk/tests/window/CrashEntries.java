package org.copperbook.desk.tests.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.store.UserFolders;

/** Entries of the crash journal, and how they would look after a crash. */
public final class CrashEntries {

    private static final long NO_SUCH_PROCESS = 4_194_999;

    private CrashEntries() {
    }

    /** The file that a crash would have left in place of one of this program. */
    public static Path ofADeadProgram(Path own) {
        String[] pieces = own.getFileName().toString().split("\\.");
        String owner = pieces[1].replaceFirst("\\d+", Long.toString(NO_SUCH_PROCESS));
        return own.resolveSibling(pieces[0] + "." + owner + "." + pieces[2]);
    }

    /** The entry of the crash journal that holds some words. */
    public static Optional<Path> find(String words) {
        Path folder = UserFolders.current().journal();
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            // A name with a dot before it is an entry that is still being written.
            for (Path f : files.filter(f -> !f.getFileName().toString().startsWith(".")).toList()) {
                if (Files.exists(f) && Files.readString(f).contains(words)) {
                    return Optional.of(f);
                }
            }
            return Optional.empty();
        } catch (IOException replacedMeanwhile) {
            return Optional.empty();
        }
    }
}

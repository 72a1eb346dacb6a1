package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;

/**
 * The keys erased from a store, as a file beside its copies: one line each, key and time. It holds no names. A copy
 * taken earlier still has the keys, and this is how it learns that they are to go.
 */
final class ErasureList {

    private static final String ENDING = "-erased.txt";

    private final Path file;

    ErasureList(Path folder, Path store) {
        file = folder.resolve(Backups.base(store) + ENDING);
    }

    Map<String, Instant> read() {
        Map<String, Instant> found = new TreeMap<>();
        if (!Files.exists(file)) {
            return found;
        }
        try {
            for (String line : Files.readAllLines(file)) {
                String[] fields = line.strip().split("\t");
                if (fields.length == 2) {
                    found.put(fields[0], Instant.parse(fields[1]));
                }
            }
            return found;
        } catch (IOException | DateTimeException e) {
            throw new StoreException(StoreException.Kind.IO, StoreText.of("io", file, e.getMessage()), e);
        }
    }

    /** Adds keys; returns all that stand in it now. */
    Map<String, Instant> add(Map<String, Instant> more) {
        Map<String, Instant> all = read();
        if (all.keySet().containsAll(more.keySet())) {
            return all;
        }
        more.forEach(all::putIfAbsent);
        StringBuilder text = new StringBuilder();
        all.forEach((key, at) -> text.append(key).append('\t').append(at).append('\n'));
        try {
            DurableFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
            return all;
        } catch (IOException e) {
            throw new StoreException(StoreException.Kind.IO, StoreText.of("io", file, e.getMessage()), e);
        }
    }
}

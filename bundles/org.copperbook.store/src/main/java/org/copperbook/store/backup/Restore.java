package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;
import org.copperbook.store.sqlite.SoleUse;

/**
 * Puts a backup in a store's place. What stood there is set aside under a name of its own, never overwritten. Who was
 * erased since the backup was taken does not come back.
 */
public final class Restore {

    /** What stands between the name of a store that was set aside and the time. */
    static final String ASIDE = ".aside-";

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");

    private final Clock clock;

    public Restore(Clock clock) {
        this.clock = clock;
    }

    /**
     * Restores.
     *
     * @param backup a file that a backup wrote; it stays as it is
     * @param store  the store's file, which no program may have open
     * @return where the store that was there lies now; empty when there was none
     * @throws StoreException NOT_FOUND, CORRUPT when the backup does not pass the audit, LOCKED when the store is open
     *                        elsewhere; the store is then as it was
     */
    public Optional<Path> replace(Path backup, Path store) {
        Path from = backup.toAbsolutePath().normalize();
        Path to = store.toAbsolutePath().normalize();
        Path scratch = to.resolveSibling(".scratch-" + UUID.randomUUID());
        try {
            Files.createDirectories(scratch);
            try {
                proveIn(scratch, from);
                Map<String, Instant> erased = new ErasureList(to.getParent(), to).read();
                new ErasureList(from.getParent(), to).read().forEach(erased::putIfAbsent);
                Path copy = CleanedCopy.of(from, erased, scratch);
                DurableFile.force(copy);
                if (!Files.exists(to)) {
                    DurableFile.moveInto(copy, to);
                    return Optional.empty();
                }
                Path aside = setAside(to);
                try {
                    DurableFile.moveInto(copy, to);
                } catch (IOException e) {
                    putBack(aside, to, e);
                    throw e;
                }
                return Optional.of(aside);
            } finally {
                ProvenBackup.deleteFolder(scratch);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("backup.aside", to, e.getMessage()), e);
        }
    }

    /**
     * Proves a backup by auditing a copy of it; the backup itself stays as it is.
     *
     * @param room folder in which the copy is made and removed again
     * @throws StoreException NOT_FOUND or CORRUPT
     */
    public static void prove(Path backup, Path room) {
        Path scratch = room.resolve(".scratch-" + UUID.randomUUID());
        try {
            Files.createDirectories(scratch);
            try {
                proveIn(scratch, backup);
            } finally {
                ProvenBackup.deleteFolder(scratch);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("io", backup, e.getMessage()), e);
        }
    }

    private static void proveIn(Path scratch, Path backup) throws IOException {
        if (!Files.isRegularFile(backup)) {
            throw new StoreException(Kind.NOT_FOUND, StoreText.of("backup.none", backup));
        }
        Path proof = Files.copy(backup, scratch.resolve("proof.sqlite"));
        ProvenBackup.check(proof).ifPresent(bad -> {
            throw new StoreException(Kind.CORRUPT, StoreText.of("backup.notSound", backup, bad));
        });
    }

    /** Moves the store with what the engine keeps beside it, which belongs to it when the file is damaged. */
    private Path setAside(Path store) throws IOException {
        SoleUse.fold(store);
        String name = store.getFileName() + ASIDE + STAMP.format(clock.instant().atOffset(ZoneOffset.UTC));
        Path aside = store.resolveSibling(name);
        for (int n = 2; Files.exists(aside); n++) {
            aside = store.resolveSibling(name + "-" + n);
        }
        try {
            move(store, aside);
        } catch (IOException e) {
            putBack(aside, store, e);
            throw e;
        }
        return aside;
    }

    /** Moves a store with what the engine keeps beside it. */
    private static void move(Path store, Path to) throws IOException {
        for (String beside : List.of("-wal", "-shm", "")) {
            Path there = store.resolveSibling(store.getFileName() + beside);
            if (Files.exists(there)) {
                Files.move(there, to.resolveSibling(to.getFileName() + beside));
            }
        }
    }

    /** Puts a store back after a failure, to which a second failure is added. */
    private static void putBack(Path aside, Path store, IOException failure) {
        try {
            move(aside, store);
        } catch (IOException e) {
            failure.addSuppressed(e);
        }
    }
}

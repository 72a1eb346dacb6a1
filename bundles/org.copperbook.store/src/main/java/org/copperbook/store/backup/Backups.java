package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;
import org.copperbook.store.sqlite.ErasedIn;

/**
 * The backups of a store in a folder: taken while it is open, each restored into a scratch store and audited before it
 * counts, old ones removed by the plan, and those kept cleaned
 * of who was erased since. The newest sound one is never removed.
 */
public final class Backups {

    private static final System.Logger LOG = System.getLogger(Backups.class.getName());
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");
    private static final String ENDING = ".sqlite";

    private final Path folder;
    private final BackupPlan plan;
    private final Clock clock;

    public Backups(Path folder, BackupPlan plan, Clock clock) {
        this.folder = folder.toAbsolutePath().normalize();
        this.plan = plan;
        this.clock = clock;
    }

    /** The folder of a store's backups where nobody has chosen another. */
    public static Path beside(Path store) {
        return store.resolveSibling("backups");
    }

    /**
     * A backup.
     *
     * @param file  where it lies
     * @param taken when, to the second
     */
    public record Backup(Path file, Instant taken) {
    }

    /** Takes a backup when the last one is older than the plan allows; nothing when none is due. */
    public Optional<Backup> takeIfDue(JobStore store) {
        List<Backup> all = of(store.file());
        Instant now = clock.instant();
        // A backup of the future comes from a clock that has been set back since; it must not stop the series.
        boolean due = all.isEmpty() || all.get(0).taken().isAfter(now.plus(Duration.ofMinutes(1)))
                || !all.get(0).taken().plus(plan.every()).isAfter(now);
        return due ? Optional.of(take(store)) : Optional.empty();
    }

    /**
     * Takes a backup now, proves it and removes those the plan no longer keeps.
     *
     * @throws StoreException CORRUPT when the copy did not pass the audit; earlier backups are then kept as they are
     */
    public Backup take(JobStore store) {
        Path scratch = folder.resolve(".scratch-" + UUID.randomUUID());
        try {
            Files.createDirectories(scratch);
            try {
                Path copy = scratch.resolve("copy" + ENDING);
                store.backup(copy);
                Path restored = scratch.resolve("restored" + ENDING);
                Files.copy(copy, restored);
                ProvenBackup.check(restored).ifPresent(bad -> {
                    throw new StoreException(Kind.CORRUPT, StoreText.of("backup.notTaken", store.file(), bad));
                });
                Backup backup = free(store.file());
                DurableFile.moveInto(copy, backup.file());
                rotate(store.file());
                follow(store, scratch);
                return backup;
            } finally {
                ProvenBackup.deleteFolder(scratch);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("backup.failed", folder, e.getMessage()), e);
        }
    }

    /** The backups of a store, newest first. */
    public List<Backup> of(Path store) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Backup> found = new ArrayList<>();
        String start = base(store) + "-";
        try (Stream<Path> files = Files.list(folder)) {
            for (Path f : files.toList()) {
                String name = f.getFileName().toString();
                if (name.startsWith(start) && name.endsWith(ENDING)) {
                    taken(name.substring(start.length(), name.length() - ENDING.length()))
                            .ifPresent(t -> found.add(new Backup(f, t)));
                }
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("io", folder, e.getMessage()), e);
        }
        found.sort(Comparator.comparing(Backup::taken).reversed());
        return found;
    }

    private void rotate(Path store) throws IOException {
        List<Backup> all = of(store);
        Instant oldest = clock.instant().minus(Duration.ofDays(plan.days()));
        for (int i = plan.keep(); i < all.size(); i++) {
            if (all.get(i).taken().isBefore(oldest)) {
                Files.deleteIfExists(all.get(i).file());
            }
        }
    }

    /** Takes out of earlier backups who was erased since. One that is not sound stays as it is, and the log names it. */
    private void follow(JobStore store, Path scratch) throws IOException {
        Map<String, Instant> erased = new ErasureList(folder, store.file()).add(store.erasures());
        for (Backup b : of(store.file())) {
            if (!erased.isEmpty() && !ErasedIn.file(b.file()).containsAll(erased.keySet())) {
                try {
                    DurableFile.moveInto(CleanedCopy.of(b.file(), erased, scratch), b.file());
                } catch (StoreException e) {
                    LOG.log(System.Logger.Level.WARNING, "who was erased still stands in " + b.file(), e);
                }
            }
        }
    }

    /** A name that no backup has yet: two within a second get two seconds. */
    private Backup free(Path store) {
        Instant at = Instant.ofEpochSecond(clock.instant().getEpochSecond());
        while (true) {
            Path file = folder.resolve(base(store) + "-" + STAMP.format(at.atOffset(ZoneOffset.UTC)) + ENDING);
            if (!Files.exists(file)) {
                return new Backup(file, at);
            }
            at = at.plusSeconds(1);
        }
    }

    private static Optional<Instant> taken(String stamp) {
        try {
            return Optional.of(LocalDateTime.parse(stamp, STAMP).toInstant(ZoneOffset.UTC));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The name of a store without its ending. */
    static String base(Path store) {
        String name = store.getFileName().toString();
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }
}

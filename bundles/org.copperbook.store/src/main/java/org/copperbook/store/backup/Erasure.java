package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.copperbook.store.Erased;
import org.copperbook.store.JobStore;
import org.copperbook.store.PrivateName;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/**
 * Erases people from a store and sees to it that backups follow: the key is written on a list beside the store and
 * beside its backups, by which the next backup cleans those that are kept, and restoring cleans what it restores.
 */
public final class Erasure {

    private final Clock clock;

    public Erasure(Clock clock) {
        this.clock = clock;
    }

    /**
     * What was erased and what is left to people.
     *
     * @param erased what the store did
     * @param aside  stores set aside by restoring, which nobody cleans: to be deleted by hand when they are not needed
     */
    public record Outcome(Erased erased, List<Path> aside) {
    }

    /**
     * Erases.
     *
     * @param backups folder of the store's backups
     * @throws StoreException NOT_FOUND when nothing is kept under the key; nothing was then written
     */
    public Outcome erase(JobStore store, Path backups, String key) {
        Erased erased = store.erase(key);
        Map<String, Instant> all = store.erasures();
        new ErasureList(store.file().getParent(), store.file()).add(all);
        new ErasureList(backups, store.file()).add(all);
        return new Outcome(erased, aside(store.file()));
    }

    /**
     * Contacts and typed names whose jobs have all been left alone for longer than the workshop keeps names. Staff, and
     * contacts no job mentions, are never due by themselves.
     */
    public List<PrivateName> due(JobStore store) {
        Integer months = store.shop().workshop().keepNamesMonths();
        if (months == null || months < 1) {
            return List.of();
        }
        Instant before = clock.instant().atOffset(ZoneOffset.UTC).minus(months, ChronoUnit.MONTHS).toInstant();
        return store.privateNames().stream().filter(n -> !n.staff() && n.lastUse() != null
                && n.lastUse().isBefore(before)).toList();
    }

    private static List<Path> aside(Path store) {
        String start = store.getFileName() + Restore.ASIDE;
        try (Stream<Path> files = Files.list(store.getParent())) {
            return files.filter(f -> f.getFileName().toString().startsWith(start)).sorted().toList();
        } catch (IOException e) {
            throw new StoreException(StoreException.Kind.IO, StoreText.of("io", store, e.getMessage()), e);
        }
    }
}

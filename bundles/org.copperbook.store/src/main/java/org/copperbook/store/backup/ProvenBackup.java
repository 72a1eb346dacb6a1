package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.store.AuditReport;
import org.copperbook.store.BadLink;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.sqlite.SqliteJobStore;

/** Proves a copy by opening it as a store and auditing it. */
final class ProvenBackup {

    private ProvenBackup() {
    }

    /** What is wrong with a scratch copy, in words; nothing when it is sound. The copy is written to on opening. */
    static Optional<String> check(Path scratch) {
        try (JobStore store = SqliteJobStore.open(scratch)) {
            AuditReport report = store.audit();
            return report.passed() ? Optional.empty()
                    : Optional.of(report.bad().map(BadLink::message).orElseGet(() -> report.problems().get(0)));
        } catch (StoreException e) {
            return Optional.of(e.getMessage());
        }
    }

    static void deleteFolder(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> in = Files.list(folder)) {
            files = in.toList();
        }
        for (Path f : files) {
            Files.deleteIfExists(f);
        }
        Files.deleteIfExists(folder);
    }
}

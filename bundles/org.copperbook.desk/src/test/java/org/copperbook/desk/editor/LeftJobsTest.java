package org.copperbook.desk.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.JobStore;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.JournalEntry;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is opened again after a crash. Expected: the tests' own inputs. */
class LeftJobsTest {

    private static final long NO_SUCH_PROCESS = 4_194_999;

    @TempDir
    private Path home;
    private String homeBefore;

    @BeforeEach
    void aHomeOfItsOwn() {
        homeBefore = System.getProperty(UserFolders.HOME_PROPERTY);
        System.setProperty(UserFolders.HOME_PROPERTY, home.toString());
    }

    @AfterEach
    void asItWas() {
        if (homeBefore == null) {
            System.clearProperty(UserFolders.HOME_PROPERTY);
        } else {
            System.setProperty(UserFolders.HOME_PROPERTY, homeBefore);
        }
    }

    @Test
    void jobsAndTheShopsOwnPartsAreToldApart() throws Exception {
        try (JobStore store = SqliteJobStore.open(home.resolve("s.sqlite"))) {
            left(store, "never-booked", "booking");
            left(store, JobStore.SHOP, "customer/k-1");
            left(store, JobStore.SHOP, "customer/k-2");
            left(store, JobStore.SHOP, "labour-rates");
            assertEquals(List.of("never-booked"), LeftJobs.of(store).stream().map(JobInput::jobId).toList());
            assertEquals(Set.of(PartKind.CUSTOMER, PartKind.LABOUR_RATES), LeftJobs.ofShop(store));
        }
    }

    @Test
    void whatThisProgramIsStillTypingIsNotOffered() throws Exception {
        try (JobStore store = SqliteJobStore.open(home.resolve("s.sqlite"))) {
            keep(store, JobStore.SHOP, "instruments");
            assertTrue(LeftJobs.ofShop(store).isEmpty());
        }
    }

    private static void keep(JobStore store, String job, String part) throws IOException {
        new CrashJournal(UserFolders.current().journal()).keep(new JournalEntry(store.file().toString(), job, part, 0,
                "p-1", Instant.EPOCH, "{}"));
    }

    /** An entry under the name of a program that runs no more. */
    private static void left(JobStore store, String job, String part) throws IOException {
        keep(store, job, part);
        Path folder = UserFolders.current().journal();
        try (Stream<Path> files = Files.list(folder)) {
            String own = "." + ProcessHandle.current().pid() + "-";
            Path file = files.filter(f -> f.getFileName().toString().contains(own)).findFirst().orElseThrow();
            Files.move(file, folder.resolve(file.getFileName().toString().replace(own, "." + NO_SUCH_PROCESS + "-")));
        }
    }
}

package org.copperbook.desk.tests.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.shared.FirstOpening;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.backup.BackupPlan;
import org.copperbook.store.backup.Backups;
import org.copperbook.store.backup.RestoreRequest;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup that was asked for is put in the store's place at the next start; one that is no good keeps nobody out. */
class RestoreAtStartTest {

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();
    private Path file;
    private Path backup;

    @BeforeEach
    void twoJobsAndABackupOfOne() throws BadRecordException {
        file = folder.resolve("workshop.sqlite");
        try (var store = SqliteJobStore.open(file)) {
            store.create(booking("Harbour Ice"), "ada");
            backup = new Backups(folder.resolve("backups"), BackupPlan.STANDARD, Clock.systemUTC()).take(store).file();
            store.create(booking("Mill Lane Bakery"), "ada");
        }
    }

    private static Booking booking(String customer) throws BadRecordException {
        return (Booking) new PartJson().read(PartKey.of(PartKind.BOOKING), "{\"schema\":1,\"customer\":\"" + customer + "\"}");
    }

    private int jobsAfterOpening() {
        FirstOpening opening = new FirstOpening((where, problem) -> FirstOpening.Answer.END, told::add);
        DeskArguments arguments = new DeskArguments(Optional.empty(), Optional.of(file), Optional.empty());
        try (DeskSession session = opening.open(arguments).orElseThrow()) {
            return session.store().register(RegisterQuery.first(9)).total();
        }
    }

    @Test
    void aBackupThatIsNotThereIsToldOfAndThePresentStoreIsOpened() {
        new RestoreRequest(file).leave(folder.resolve("gone.sqlite"));
        assertEquals(2, jobsAfterOpening());
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("gone.sqlite") && told.get(0).contains("Nothing was restored"), told.get(0));
        assertEquals(2, jobsAfterOpening());
        assertEquals(1, told.size(), "it is told once");
    }

    @Test
    void aDamagedBackupIsToldOfAndThePresentStoreIsOpened() throws IOException {
        byte[] half = Files.readAllBytes(backup);
        java.util.Arrays.fill(half, 4096, half.length, (byte) 7);
        Files.write(backup, half);
        new RestoreRequest(file).leave(backup);
        assertEquals(2, jobsAfterOpening());
        assertTrue(told.get(0).contains(backup.toString()), told.get(0));
    }

    @Test
    void aSoundBackupTakesThePlaceOfTheStore() {
        new RestoreRequest(file).leave(backup);
        assertEquals(1, jobsAfterOpening());
        assertEquals(List.of(), told);
    }
}

package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobStore;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the workshop has secrets the commands that write sign somebody in, and are refused as the window is. */
class SignInAsTest {

    private static final String OWNERS = "größe zählt 1,6";

    @TempDir
    Path folder;

    private BatchRun batch;
    private Path owners;
    private Path winders;

    @BeforeEach
    void secrets() throws Exception {
        batch = new BatchRun(folder);
        try (JobStore store = SqliteJobStore.open(batch.store)) {
            store.savePerson(new Person("o", "Olga Owner", Set.of(Role.OWNER), null, null, true), "o");
            store.savePerson(new Person("w", "Wanda Winder", Set.of(Role.WINDER), null, null, true), "o");
            store.savePerson(new Person("w2", "wanda winder", Set.of(Role.OFFICE), null, null, true), "o");
            store.accounts().begin("o", OWNERS.toCharArray());
            store.accounts().reset("w", "of the winder".toCharArray());
        }
        owners = Files.writeString(folder.resolve("owners"), OWNERS + "\nnot this line\n");
        winders = Files.writeString(folder.resolve("winders"), "of the winder");
    }

    private BatchRun.Result takeIn(String... more) {
        String[] all = new String[2 + more.length];
        all[0] = "take-in";
        all[1] = BatchRun.demoJob("2026-0002-shorted-diode");
        System.arraycopy(more, 0, all, 2, more.length);
        return batch.on(all);
    }

    private String whoSavedTheBooking() {
        try (JobStore store = SqliteJobStore.open(batch.store)) {
            return store.current(store.idOf("2026-0002").orElseThrow(),
                    PartKey.parse("booking")).orElseThrow().revision().who();
        }
    }

    @Test
    void withoutSignInACommandThatWritesIsRefusedInOneLineAndReadingIsNot() {
        BatchRun.Result r = takeIn();
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("Nobody is signed in") && r.onlyErrorLine().contains("foreman, owner"),
                r.err());
        assertEquals(0, batch.on("list").exit());
        assertFalse(batch.on("list").out().contains("2026-0002"));
        assertEquals(0, batch.on("verify").exit());
    }

    @Test
    void theSecretComesFromAFileAndTheSaveCarriesWhoSignedIn() {
        BatchRun.Result r = takeIn("--as", "olga owner", "--secret-file", owners.toString());
        assertEquals(0, r.exit(), r.err());
        assertEquals("o", whoSavedTheBooking());
        assertFalse(r.out().contains(OWNERS) || r.err().contains(OWNERS));
    }

    @Test
    void theSecretComesFromTheStandardInput() {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream((OWNERS + "\n").getBytes(StandardCharsets.UTF_8)));
            BatchRun.Result r = takeIn("--as", "o", "--secret-file", "-");
            assertEquals(0, r.exit(), r.err());
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void whoMayNotIsToldWhoMay() {
        BatchRun.Result r = takeIn("--as", "w", "--secret-file", winders.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("Wanda Winder may not take in jobs from files"), r.err());
        assertTrue(r.onlyErrorLine().contains("Who may: foreman, owner"), r.err());
        r = batch.on("erase-person", "w2", "--as", "w", "--secret-file", winders.toString());
        assertTrue(r.onlyErrorLine().contains("may not erase"), r.err());
        r = takeIn("--who", "w", "--as", "o", "--secret-file", owners.toString());
        assertTrue(r.onlyErrorLine().contains("Olga Owner is signed in"), r.err());
    }

    @Test
    void aWrongSecretAndANameOfNobodyOrOfTwoAreRefused() {
        BatchRun.Result r = takeIn("--as", "o", "--secret-file", winders.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("not the secret of Olga Owner"), r.err());
        assertFalse(r.err().contains("of the winder"));
        assertTrue(takeIn("--as", "Nemo", "--secret-file", owners.toString()).onlyErrorLine().contains("Nemo"));
        assertTrue(takeIn("--as", "Wanda Winder", "--secret-file", winders.toString()).onlyErrorLine()
                .contains("w, w2"));
        assertTrue(takeIn("--secret-file", owners.toString()).onlyErrorLine().contains("--as"));
    }
}

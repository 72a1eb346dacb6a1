package org.copperbook.store.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrashJournalTest {

    /** No system gives a process this number together with this start. */
    private static final Owner DEAD = new Owner(99_999_999_999L, 1);

    @TempDir
    Path temp;

    private Path folder;
    private CrashJournal crashed;
    private CrashJournal mine;

    @BeforeEach
    void journals() {
        folder = temp.resolve("journal");
        crashed = new CrashJournal(folder, DEAD);
        mine = new CrashJournal(folder);
    }

    private static JournalEntry entry(String part, String state, int second) {
        return new JournalEntry("/home/ada/workshop.sqlite", "job-1", part, 3, "ada",
                Instant.parse("2026-03-02T08:00:00Z").plusSeconds(second), state);
    }

    private List<JournalEntry> left() throws IOException {
        return mine.left("/home/ada/workshop.sqlite").entries().stream().map(LeftBehind::entry).toList();
    }

    private long files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }

    @Test
    void whatWasTypedBeforeACrashIsThereAfterwardsLatestFirst() throws IOException {
        crashed.keep(entry("nameplate", "{\"serial\":\"A\"}", 0));
        crashed.keep(entry("nameplate", "{\"serial\":\"A-1", 1));
        crashed.keep(entry("booking", "not even JSON \u2126 \n", 2));
        assertEquals(List.of(entry("booking", "not even JSON \u2126 \n", 2),
                entry("nameplate", "{\"serial\":\"A-1", 1)), left());
        assertEquals(2, files());
    }

    @Test
    void aSavedEntryIsForgotten() throws IOException {
        crashed.keep(entry("nameplate", "a", 0));
        crashed.discard("/home/ada/workshop.sqlite", "job-1", "nameplate");
        assertEquals(List.of(), left());
        assertEquals(0, files());
        crashed.discard("/home/ada/workshop.sqlite", "job-1", "never kept");
    }

    @Test
    void entriesOfARunningProgramAndOfOtherStoresAreNotOffered() throws IOException {
        mine.keep(entry("nameplate", "still typing", 0));
        crashed.keep(new JournalEntry("/elsewhere.sqlite", "job-1", "nameplate", 0, null, Instant.EPOCH, "x"));
        assertEquals(List.of(), left());
        assertEquals(1, mine.left("/elsewhere.sqlite").entries().size());
    }

    @Test
    void twoProgramsOnTheSamePartDoNotWriteOverEachOther() throws IOException {
        crashed.keep(entry("nameplate", "theirs", 0));
        mine.keep(entry("nameplate", "mine", 1));
        assertEquals(List.of(entry("nameplate", "theirs", 0)), left());
        assertEquals(2, files());
    }

    @Test
    void onlyOneWindowTakesAnEntryOver() throws IOException {
        crashed.keep(entry("nameplate", "typed", 0));
        LeftBehind found = mine.left("/home/ada/workshop.sqlite").entries().get(0);
        assertTrue(mine.takeOver(found));
        assertFalse(new CrashJournal(folder, new Owner(99_999_999_998L, 1)).takeOver(found));
        assertEquals(List.of(), left());
        assertEquals(1, files());
        mine.discard("/home/ada/workshop.sqlite", "job-1", "nameplate");
        assertEquals(0, files());
    }

    @Test
    void anEntryDoesNotPushAsideWhatIsBeingTypedNow() throws IOException {
        crashed.keep(entry("nameplate", "theirs", 0));
        mine.keep(entry("nameplate", "mine", 1));
        LeftBehind found = mine.left("/home/ada/workshop.sqlite").entries().get(0);
        assertFalse(mine.takeOver(found));
        mine.discard(found);
        assertEquals(1, files());
    }

    @Test
    void aDamagedFileIsReportedAndDoesNotHideTheOthers() throws IOException {
        crashed.keep(entry("nameplate", "whole", 0));
        Path bad = Files.writeString(folder.resolve("ff." + DEAD + ".json"), "{\"store\":");
        Files.writeString(folder.resolve("readme.txt"), "not ours");
        Remains remains = mine.left("/home/ada/workshop.sqlite");
        assertEquals(1, remains.entries().size());
        assertEquals(List.of(bad), remains.damaged());
        assertTrue(Files.exists(bad));
    }

    @Test
    void piecesOfAnInterruptedWriteAreClearedAwayLater() throws IOException {
        Files.createDirectories(folder);
        Path old = Files.writeString(folder.resolve(".x.json.1.part"), "{");
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(3))));
        Path fresh = Files.writeString(folder.resolve(".x.json.2.part"), "{");
        assertEquals(List.of(), left());
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(fresh));
    }

    @Test
    void aJournalThatWasNeverUsedIsEmpty() throws IOException {
        assertEquals(List.of(), left());
        assertFalse(Files.exists(folder));
    }

    @Test
    void thisProgramIsAliveAndAnInventedOneIsNot() {
        assertTrue(Owner.self().alive());
        assertFalse(DEAD.alive());
        assertFalse(new Owner(ProcessHandle.current().pid(), 1).alive());
    }
}

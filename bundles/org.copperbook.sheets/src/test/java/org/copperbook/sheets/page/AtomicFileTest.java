package org.copperbook.sheets.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.WorkbookNotWrittenException.Reason;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {

    @TempDir
    Path folder;
    private Path target;

    @BeforeEach
    void anOldFileStands() throws IOException {
        target = folder.resolve("book.xlsx");
        Files.writeString(target, "old");
    }

    private static AtomicFile.Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private void refused(Reason reason, Path at) throws IOException {
        List<Path> before = files();
        WorkbookNotWrittenException e = assertThrows(WorkbookNotWrittenException.class,
                () -> new AtomicFile(at).write(text("new")));
        assertEquals(reason, e.reason(), e.getMessage());
        assertEquals("old", Files.readString(target));
        assertEquals(before, files());
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    @Test
    void theNewFileTakesThePlaceOfTheOld() throws IOException {
        new AtomicFile(target).write(text("new"));
        assertEquals("new", Files.readString(target));
        assertEquals(List.of(target), files());
    }

    @Test
    void aFailureHalfWayLeavesTheOldFileAndNothingElse() throws IOException {
        WorkbookNotWrittenException e = assertThrows(WorkbookNotWrittenException.class,
                () -> new AtomicFile(target).write(out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("No space left on device");
                }));
        assertEquals(Reason.DISK, e.reason());
        assertTrue(e.getMessage().contains("No space left"), e.getMessage());
        assertEquals("old", Files.readString(target));
        assertEquals(List.of(target), files());
    }

    @Test
    void aReadOnlyFileIsNotReplaced() throws IOException {
        assertTrue(target.toFile().setWritable(false, false));
        refused(Reason.TARGET_READ_ONLY, target);
    }

    @Test
    void aFileThatAnotherProgramHasLockedIsNotReplaced() throws IOException {
        try (FileChannel channel = FileChannel.open(target, StandardOpenOption.WRITE); FileLock lock = channel.lock()) {
            assertTrue(lock.isValid());
            refused(Reason.TARGET_LOCKED, target);
        }
    }

    @Test
    void aFileOpenInASpreadsheetIsNotReplaced() throws IOException {
        Files.writeString(folder.resolve(".~lock.book.xlsx#"), "somebody");
        refused(Reason.TARGET_LOCKED, target);
    }

    @Test
    void aMissingFolderAndAFolderInPlaceOfTheFileAreNamed() throws IOException {
        refused(Reason.FOLDER_MISSING, folder.resolve("none").resolve("book.xlsx"));
        Path inner = Files.createDirectory(folder.resolve("inner.xlsx"));
        refused(Reason.TARGET_NOT_A_FILE, inner);
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), target);
        new AtomicFile(link).write(text("new"));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(target));
    }
}

package org.copperbook.store.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Files that are either there whole or not at all, whatever happens to the program or the power. */
public final class DurableFile {

    private DurableFile() {
    }

    /**
     * Writes a file: into a name beside it, forced to the disk, then moved over the target.
     *
     * @throws IOException when it cannot be written; an earlier file under the name is then still whole
     */
    public static void write(Path target, byte[] bytes) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path beside = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel out = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
                out.force(true);
            }
            moveInto(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Moves a finished file over its final name and makes the move last. */
    public static void moveInto(Path finished, Path target) throws IOException {
        try {
            Files.move(finished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(finished, target, StandardCopyOption.REPLACE_EXISTING);
        }
        forceFolder(target.toAbsolutePath().getParent());
    }

    /** Forces a file's content to the disk. */
    public static void force(Path file) throws IOException {
        try (FileChannel c = FileChannel.open(file, StandardOpenOption.WRITE)) {
            c.force(true);
        }
    }

    /**
     * Forces the names in a folder to the disk. Windows refuses to open a folder and keeps names itself, so there a
     * refusal is no error.
     */
    public static void forceFolder(Path folder) {
        FileChannel c;
        try {
            c = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (c) {
            c.force(true);
        } catch (IOException e) {
            throw new UncheckedIOException("the folder " + folder + " could not be forced to the disk", e);
        }
    }
}

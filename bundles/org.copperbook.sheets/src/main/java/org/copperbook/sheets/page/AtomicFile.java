package org.copperbook.sheets.page;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import java.util.UUID;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.WorkbookNotWrittenException.Reason;

/**
 * Writes a whole file or leaves the old one: into a new file in the same folder, forced to the disk, then moved over
 * the target. A reader sees the old file or the new one, never a part.
 */
public final class AtomicFile {

    private static final Set<PosixFilePermission> WRITERS = Set.of(PosixFilePermission.OWNER_WRITE,
            PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    /** Writes the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private final Path target;

    public AtomicFile(Path target) {
        this.target = target.toAbsolutePath();
    }

    /** @throws WorkbookNotWrittenException when the target cannot be replaced; it is then unchanged */
    public void write(Content content) throws WorkbookNotWrittenException {
        Path real = checked();
        Path temporary = real.resolveSibling("." + real.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            fill(temporary, content);
            replace(temporary, real);
            forceFolder(real.getParent());
        } finally {
            discard(temporary);
        }
    }

    private Path checked() throws WorkbookNotWrittenException {
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw not(Reason.FOLDER_MISSING, "the folder " + folder + " does not exist; make it or choose another", null);
        }
        if (!Files.exists(target)) {
            return target;
        }
        if (!Files.isRegularFile(target)) {
            throw not(Reason.TARGET_NOT_A_FILE, target + " is not a file; choose another name", null);
        }
        if (!Files.isWritable(target) || marksReadOnly()) {
            throw not(Reason.TARGET_READ_ONLY, target + " is read-only; choose another name or allow writing", null);
        }
        refuseWhenOpen();
        try {
            return target.toRealPath();
        } catch (IOException e) {
            throw not(Reason.DISK, target + " cannot be reached: " + e.getMessage(), e);
        }
    }

    /** A file without any write permission is meant to stay, even for a user whom the system would let through. */
    private boolean marksReadOnly() {
        try {
            PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
            return view != null && view.readAttributes().permissions().stream().noneMatch(WRITERS::contains);
        } catch (IOException e) {
            return false;
        }
    }

    /** Where files can be replaced while a spreadsheet has them open, its mark beside the file tells. */
    private void refuseWhenOpen() throws WorkbookNotWrittenException {
        String name = target.getFileName().toString();
        for (String mark : new String[] {".~lock." + name + "#", "~$" + name}) {
            if (Files.exists(target.resolveSibling(mark))) {
                throw not(Reason.TARGET_LOCKED, target + " is open in a spreadsheet; close it there (if nobody has it"
                        + " open, delete " + target.resolveSibling(mark) + ")", null);
            }
        }
        try (FileChannel channel = FileChannel.open(target, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            if (lock == null) {
                throw locked(null);
            }
        } catch (WorkbookNotWrittenException e) {
            throw e;
        } catch (OverlappingFileLockException | FileSystemException e) {
            throw locked(e);
        } catch (IOException e) {
            // a file system that knows no locks; the move decides
            return;
        }
    }

    private void fill(Path temporary, Content content) throws WorkbookNotWrittenException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            OutputStream out = new KeepOpen(Channels.newOutputStream(channel));
            content.writeTo(out);
            out.flush();
            channel.force(true);
        } catch (AccessDeniedException e) {
            throw not(Reason.FOLDER_READ_ONLY, "no file may be made in " + target.getParent()
                    + "; choose another folder", e);
        } catch (IOException e) {
            throw not(Reason.DISK, target + " was not written: " + e.getMessage(), e);
        }
    }

    private void replace(Path temporary, Path real) throws WorkbookNotWrittenException {
        try {
            try {
                Files.move(temporary, real, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(temporary, real, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (FileSystemException e) {
            throw locked(e);
        } catch (IOException e) {
            throw not(Reason.DISK, target + " was not replaced: " + e.getMessage(), e);
        }
    }

    /** Writers of archives close what they are given; the channel must stay open to be forced. */
    private static final class KeepOpen extends BufferedOutputStream {
        KeepOpen(OutputStream out) {
            super(out, 1 << 16);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // some systems cannot open a folder; there the move is durable by itself
            return;
        }
    }

    private static void discard(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            temporary.toFile().deleteOnExit();
        }
    }

    private WorkbookNotWrittenException locked(Exception cause) {
        return not(Reason.TARGET_LOCKED, target + " is in use by another program; close it there and try again", cause);
    }

    private static WorkbookNotWrittenException not(Reason reason, String message, Exception cause) {
        return new WorkbookNotWrittenException(reason, message, cause);
    }
}

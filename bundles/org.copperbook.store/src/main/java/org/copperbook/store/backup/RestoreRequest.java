package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;

/**
 * A note beside a store that a backup is to take its place before it is next opened, since a window cannot change the
 * store it has open.
 */
public final class RestoreRequest {

    private final Path store;
    private final Path note;

    public RestoreRequest(Path store) {
        this.store = store.toAbsolutePath().normalize();
        note = this.store.resolveSibling(this.store.getFileName() + ".restore");
    }

    /** Leaves the note. */
    public void leave(Path backup) {
        try {
            DurableFile.write(note, backup.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Takes the note away. */
    public void withdraw() {
        try {
            Files.deleteIfExists(note);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /**
     * Does what the note asks, once: the note is gone afterwards, whatever came of it.
     *
     * @return where the store that was there lies now; empty when nothing was asked
     * @throws StoreException when it could not be done; the store is then as it was
     */
    public Optional<Path> carryOut(Clock clock) {
        if (!Files.isRegularFile(note)) {
            return Optional.empty();
        }
        // Only then: a program that is ended while the store's place is empty must do it at its next start.
        try {
            return new Restore(clock).replace(Path.of(Files.readString(note)), store);
        } catch (IOException e) {
            throw failed(e);
        } finally {
            withdraw();
        }
    }

    private StoreException failed(IOException e) {
        return new StoreException(StoreException.Kind.IO, StoreText.of("io", note, e.getMessage()), e);
    }
}

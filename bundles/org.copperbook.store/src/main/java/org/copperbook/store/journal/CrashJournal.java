package org.copperbook.store.journal;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.copperbook.store.files.DurableFile;

/**
 * Keeps typed text through a crash: one small file per part being edited, replaced whole at each change and gone once
 * the part is saved. File names carry the program that owns the entry, so that two windows on one store do not write
 * over each other and an entry is offered again only when its program no longer runs.
 *
 * <p>Safe for use by several threads. Every call waits for the disk, so call it outside the user interface's thread.
 */
public final class CrashJournal {

    private static final String END = ".json";
    private static final Duration FORGOTTEN = Duration.ofDays(1);

    private final Path folder;
    private final Owner self;
    private final ObjectMapper mapper = JsonMapper.builder().addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS).build();

    /** A journal in a folder, which is made when first needed. */
    public CrashJournal(Path folder) {
        this(folder, Owner.self());
    }

    CrashJournal(Path folder, Owner self) {
        this.folder = folder;
        this.self = self;
    }

    /**
     * Keeps an entry in place of this program's earlier one for the same part; durable on return.
     *
     * @throws IOException when it cannot be written; the earlier entry then still stands
     */
    public synchronized void keep(JournalEntry entry) throws IOException {
        DurableFile.write(own(entry.store(), entry.jobId(), entry.part()), mapper.writeValueAsBytes(entry));
    }

    /** Forgets this program's entry for a part: it is saved, or the person threw it away. */
    public synchronized void discard(String store, String jobId, String part) throws IOException {
        Files.deleteIfExists(own(store, jobId, part));
    }

    /** Forgets an entry left behind by a crash. */
    public synchronized void discard(LeftBehind left) throws IOException {
        Files.deleteIfExists(left.file());
    }

    /** What earlier programs left behind for a store. */
    public synchronized Remains left(String store) throws IOException {
        List<LeftBehind> entries = new ArrayList<>();
        List<Path> damaged = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return new Remains(entries, damaged);
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                removeWhenForgotten(file);
                Optional<Owner> owner = owner(file);
                if (owner.isEmpty() || owner.get().equals(self) || owner.get().alive()) {
                    continue;
                }
                try {
                    JournalEntry entry = mapper.readValue(Files.readAllBytes(file), JournalEntry.class);
                    if (entry.store().equals(store)) {
                        entries.add(new LeftBehind(entry, file));
                    }
                } catch (NoSuchFileException e) {
                    continue;
                } catch (IOException e) {
                    damaged.add(file);
                }
            }
        }
        entries.sort(Comparator.comparing((LeftBehind l) -> l.entry().typedAt()).reversed());
        return new Remains(entries, damaged);
    }

    /**
     * Makes an entry left behind this program's own, so that no other window offers it too.
     *
     * @return false when another window was quicker, or this program is editing the same part already
     */
    public synchronized boolean takeOver(LeftBehind left) throws IOException {
        JournalEntry e = left.entry();
        Path mine = own(e.store(), e.jobId(), e.part());
        try {
            Files.move(left.file(), mine);
            DurableFile.forceFolder(folder);
            return true;
        } catch (NoSuchFileException | FileAlreadyExistsException x) {
            return false;
        }
    }

    private Path own(String store, String jobId, String part) {
        return folder.resolve(name(store, jobId, part) + "." + self + END);
    }

    private static Optional<Owner> owner(Path file) {
        String[] pieces = file.getFileName().toString().split("\\.");
        return pieces.length == 3 && pieces[2].equals(END.substring(1)) ? Owner.parse(pieces[1]) : Optional.empty();
    }

    /** A crash in the middle of writing leaves a nameless piece; another program may still be writing a fresh one. */
    private static void removeWhenForgotten(Path file) throws IOException {
        String name = file.getFileName().toString();
        if (name.startsWith(".") && name.endsWith(".part")) {
            try {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(Instant.now().minus(FORGOTTEN))) {
                    Files.deleteIfExists(file);
                }
            } catch (NoSuchFileException e) {
                return;
            }
        }
    }

    /** The key's hash, since job and part names are no safe file names everywhere. */
    private static String name(String store, String jobId, String part) {
        try {
            byte[] key = String.join("\n", store, jobId, part).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(key), 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

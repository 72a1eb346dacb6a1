package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.Plausibility;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.store.JobStore;

/** Reads job files that may hold anything, and refuses a bad one in one line that names file, place and mend. */
final class JobFileReader {

    /** Larger files are refused before they are read: a job with every reading is well below one megabyte. */
    static final long LARGEST = 8L * 1024 * 1024;

    private static final int MOST_PLACES = 8;
    private static final Set<String> ROOT_FIELDS = Set.of("copperbookJob", "id", "number", "parts");

    private final PartJson json;

    JobFileReader(PartJson json) {
        this.json = json;
    }

    /**
     * A job read from a file.
     *
     * @param file  the file
     * @param job   the job
     * @param notes what the reader should know, one line each
     */
    record ReadJob(Path file, Job job, List<String> notes) {
    }

    /** Reads one file. */
    ReadJob read(Path file) {
        byte[] bytes = bytes(file);
        checkText(file, bytes);
        Job job;
        try {
            job = new JobFile(json).read(new ByteArrayInputStream(bytes));
        } catch (BadRecordException e) {
            throw new BadUse(BatchText.of("file.bad-record", file, where(e), e.problem(), mend(e)));
        }
        checkNames(file, job);
        List<Plausibility.Problem> impossible = Plausibility.impossible(job);
        if (!impossible.isEmpty()) {
            Plausibility.Problem first = impossible.get(0);
            String more = impossible.size() == 1 ? "" : BatchText.of("file.more-problems", impossible.size() - 1);
            throw new BadUse(BatchText.of("file.impossible", file, first.part(), first.place(), first.problem(), first.mend(),
                    more));
        }
        return new ReadJob(file, job, notes(file, bytes, job));
    }

    /** The number names workbooks and the id is a key of the store, in which the shop's own parts hang on "shop". */
    private static void checkNames(Path file, Job job) {
        if (!job.number().matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ./-]{0,39}|")) {
            throw new BadUse(BatchText.of("file.bad-number", file, job.number()));
        }
        if (!job.id().matches("[A-Za-z0-9-]{1,64}") || job.id().equals(JobStore.SHOP)) {
            throw new BadUse(BatchText.of("file.bad-id", file, job.id()));
        }
    }

    private static byte[] bytes(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadUse(BatchText.of("file.folder", file));
        }
        if (!Files.exists(file)) {
            throw new BadUse(BatchText.of("file.missing", file));
        }
        if (!Files.isRegularFile(file)) {
            throw new BadUse(BatchText.of("file.not-regular", file));
        }
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw new BadUse(BatchText.of("file.empty", file));
            }
            if (size > LARGEST) {
                throw new BadUse(BatchText.of("file.too-large", file, size / 1_000_000, LARGEST / 1024 / 1024));
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
    }

    private static void checkText(Path file, byte[] bytes) {
        int zero = 0;
        while (zero < bytes.length && bytes[zero] != 0) {
            zero++;
        }
        if (zero < bytes.length) {
            throw new BadUse(BatchText.of("file.binary", file, zero));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer some = CharBuffer.allocate(8192);
        try {
            CoderResult result;
            do {
                some.clear();
                result = decoder.decode(in, some, true);
                if (result.isError()) {
                    result.throwException();
                }
            } while (result.isOverflow());
        } catch (CharacterCodingException e) {
            throw new BadUse(BatchText.of("file.not-utf8", file, line(bytes, in.position())));
        }
    }

    private static int line(byte[] bytes, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    /** The part as it stands in the file, and the place in it. */
    private static String where(BadRecordException e) {
        if (e.place().isEmpty()) {
            return e.part();
        }
        return e.part().equals("job file") ? e.place() : e.part() + " at " + e.place();
    }

    private static String mend(BadRecordException e) {
        if (e.problem().startsWith("Unexpected end")) {
            return BatchText.of("mend.cut-off");
        }
        return BatchText.of(e.place().startsWith("line ") ? "mend.json" : "mend.value");
    }

    private List<String> notes(Path file, byte[] bytes, Job job) {
        List<String> notes = new ArrayList<>();
        for (Plausibility.Problem p : Plausibility.missingTemperatures(job)) {
            notes.add(BatchText.of("note.problem", file, p.part(), p.place(), p.problem(), p.mend()));
        }
        List<String> unknown = UnknownFields.of(job);
        if (!unknown.isEmpty()) {
            notes.add(BatchText.of("note.unknown-kept", file, unknown.size(), some(unknown)));
        }
        List<String> lost = unknownAtTheTop(bytes);
        if (!lost.isEmpty()) {
            notes.add(BatchText.of("note.unknown-dropped", file, some(lost)));
        }
        return notes;
    }

    private static String some(List<String> places) {
        return String.join(", ", places.subList(0, Math.min(places.size(), MOST_PLACES)))
                + (places.size() > MOST_PLACES ? " ..." : "");
    }

    private List<String> unknownAtTheTop(byte[] bytes) {
        List<String> unknown = new ArrayList<>();
        try (JsonParser p = json.mapper().createParser(bytes)) {
            p.nextToken();
            while (p.nextToken() == JsonToken.FIELD_NAME) {
                if (!ROOT_FIELDS.contains(p.currentName())) {
                    unknown.add(p.currentName());
                }
                p.nextToken();
                p.skipChildren();
            }
        } catch (IOException e) {
            throw new IllegalStateException("a file that was read once cannot be read again", e);
        }
        return unknown;
    }
}

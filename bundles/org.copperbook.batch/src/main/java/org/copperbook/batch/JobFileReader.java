package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayInputStream;
import java.io.IOException;
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
        byte[] bytes = InputFile.read(file);
        Job job;
        try {
            job = new JobFile(json).read(new ByteArrayInputStream(bytes));
        } catch (BadRecordException e) {
            throw InputFile.refused(file, e);
        }
        checkNames(file, job);
        InputFile.refuse(file, Plausibility.impossible(job));
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

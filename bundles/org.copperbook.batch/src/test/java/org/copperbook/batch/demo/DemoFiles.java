package org.copperbook.batch.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.WindingData;

/** The demo folder as the tests see it. */
final class DemoFiles {

    static final Path FOLDER = Path.of("..", "..", "demo-data").toAbsolutePath().normalize();

    private DemoFiles() {
    }

    static List<Path> jobFiles() {
        try (Stream<Path> files = Files.list(FOLDER.resolve("jobs"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Job read(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new JobFile(new PartJson()).read(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (BadRecordException e) {
            throw new IllegalStateException(file.getFileName() + ": " + e.getMessage(), e);
        }
    }

    static List<Job> jobs() {
        return jobFiles().stream().map(DemoFiles::read).toList();
    }

    static JsonNode tree(Path file) {
        try {
            return new ObjectMapper().readTree(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A captured winding with the job it belongs to; prints as "2026-0001 winding/main-stator". */
    record Captured(Job job, PartKey key, WindingData winding) {
        @Override
        public String toString() {
            return job.number() + " " + key;
        }
    }

    static List<Captured> windings() {
        List<Captured> all = new ArrayList<>();
        for (Job job : jobs()) {
            for (PartKey key : job.keys(PartKind.WINDING)) {
                all.add(new Captured(job, key, (WindingData) job.part(key).orElseThrow()));
            }
        }
        return all;
    }

    /** Places of the first tree that the second does not hold with the same value; numbers are compared as numbers. */
    static List<String> lost(String place, JsonNode first, JsonNode second) {
        List<String> lost = new ArrayList<>();
        if (first.isObject() && second.isObject()) {
            for (Map.Entry<String, JsonNode> e : first.properties()) {
                lost.addAll(lost(place + "/" + e.getKey(), e.getValue(), second.path(e.getKey())));
            }
        } else if (first.isArray() && second.isArray() && first.size() == second.size()) {
            for (int i = 0; i < first.size(); i++) {
                lost.addAll(lost(place + "/" + i, first.get(i), second.get(i)));
            }
        } else if (first.isNumber() && second.isNumber()) {
            if (first.decimalValue().compareTo(second.decimalValue()) != 0) {
                lost.add(place);
            }
        } else if (!first.equals(second)) {
            lost.add(place);
        }
        return lost;
    }

    /** Visits every field of every object of a tree. */
    static void everyField(JsonNode node, BiConsumer<String, JsonNode> visit) {
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> e : node.properties()) {
                visit.accept(e.getKey(), e.getValue());
                everyField(e.getValue(), visit);
            }
        } else {
            node.forEach(n -> everyField(n, visit));
        }
    }
}

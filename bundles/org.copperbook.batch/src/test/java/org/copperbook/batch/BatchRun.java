package org.copperbook.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Runs commands against a store in a folder and keeps what they print. */
final class BatchRun {

    static final Path DEMO = Path.of("..", "..", "demo-data").toAbsolutePath().normalize();

    final Path store;
    private final Path folder;
    private String password;

    BatchRun(Path folder) {
        this.folder = folder;
        store = folder.resolve("test.sqlite");
    }

    /** What a command gave. */
    record Result(int exit, String out, String err) {

        JsonNode json() {
            try {
                return new ObjectMapper().readTree(out);
            } catch (IOException e) {
                throw new UncheckedIOException(out, e);
            }
        }

        /** The one line that a refused command may print. */
        String onlyErrorLine() {
            List<String> lines = err.lines().toList();
            if (lines.size() != 1) {
                throw new AssertionError("expected one line, got: " + err);
            }
            return lines.get(0);
        }
    }

    /** Runs a command that uses the store of this run. */
    Result on(String... arguments) {
        List<String> all = new ArrayList<>(Arrays.asList(arguments));
        all.add("--store");
        all.add(store.toString());
        return run(all.toArray(String[]::new));
    }

    /** What the environment variable for the password holds from now on. */
    void password(String secret) {
        password = secret;
    }

    Result run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        BatchContext standard = BatchContext.standard(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), DEMO);
        BatchContext here = new BatchContext(standard.stores(), standard.out(), standard.err(),
                folder.resolve("default.sqlite"), standard.demoData(), standard.json(),
                n -> n.equals(StorePlace.PASSWORD) ? password : null);
        int exit = new BatchCommands(here).run(arguments);
        return new Result(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A job file of the demo workshop. */
    static String demoJob(String name) {
        return DEMO.resolve("jobs").resolve(name + ".json").toString();
    }
}

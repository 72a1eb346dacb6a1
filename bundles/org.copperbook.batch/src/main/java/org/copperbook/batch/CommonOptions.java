package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.copperbook.store.JobStore;
import picocli.CommandLine.Option;

/** Options that most commands have. */
final class CommonOptions {

    @Option(names = "--store", paramLabel = "FILE", descriptionKey = "option.store")
    private Path store;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    boolean json() {
        return json;
    }

    /** The store's file, named or by default. */
    Path store(BatchContext context) {
        return (store == null ? context.defaultStore() : store).toAbsolutePath().normalize();
    }

    /** Whether the user named a store. */
    boolean storeNamed() {
        return store != null;
    }

    /** Works on a store that must be there already, and closes it. */
    <T> T withStore(BatchContext context, Function<JobStore, T> work) {
        Path file = store(context);
        if (Files.isDirectory(file)) {
            throw new BadUse(BatchText.of("store.folder", file));
        }
        if (!Files.exists(file)) {
            throw new BadUse(BatchText.of("store.missing", file));
        }
        try (JobStore open = context.stores().open(file)) {
            return work.apply(open);
        }
    }

    /** The key of the job with a number. */
    static String jobId(JobStore store, String number) {
        return store.idOf(number).orElseThrow(() -> new BadUse(BatchText.of("job.unknown", number, store.file())));
    }

    /** Writes one JSON document on the standard output. */
    static void print(BatchContext context, Object document) {
        try {
            context.out().println(context.json().mapper().writerWithDefaultPrettyPrinter().writeValueAsString(document));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result could not be written as JSON", e);
        }
    }
}

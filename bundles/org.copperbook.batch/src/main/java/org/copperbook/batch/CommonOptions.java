package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.file.Path;
import java.util.function.Function;
import org.copperbook.store.JobStore;
import picocli.CommandLine.Option;

/** Options that most commands have. */
final class CommonOptions {

    @Option(names = "--store", paramLabel = "FILE", descriptionKey = "option.store")
    private Path store;

    @Option(names = "--connection", paramLabel = "URL", descriptionKey = "option.connection")
    private String connection;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    boolean json() {
        return json;
    }

    /** The store's file, named or by default; of a store on a server the local one that stands for it. */
    Path store(BatchContext context) {
        return place(context).file();
    }

    /** Where the store is. */
    StorePlace place(BatchContext context) {
        if (connection != null && store != null) {
            throw new BadUse(BatchText.of("store.both"));
        }
        return connection != null ? StorePlace.connection(connection)
                : new StorePlace.InFile((store == null ? context.defaultStore() : store).toAbsolutePath().normalize());
    }

    /** Whether the user named a store. */
    boolean storeNamed() {
        return store != null || connection != null;
    }

    /** Whether the user named a store on a server. */
    boolean onServer() {
        return connection != null;
    }

    /** Works on a store that must be there already, and closes it. */
    <T> T withStore(BatchContext context, Function<JobStore, T> work) {
        try (JobStore open = place(context).openThere(context)) {
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

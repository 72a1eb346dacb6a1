package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.JobStore;
import org.copperbook.store.people.SignIn;
import picocli.CommandLine.Option;

/** Options that most commands have. */
final class CommonOptions {

    /** What {@code --who} is when nobody said anything. */
    static final String NOBODY_NAMED = "batch";

    @Option(names = "--store", paramLabel = "FILE", descriptionKey = "option.store")
    private Path store;

    @Option(names = "--connection", paramLabel = "URL", descriptionKey = "option.connection")
    private String connection;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    @Option(names = "--as", paramLabel = "NAME", descriptionKey = "option.as")
    private String as;

    @Option(names = "--secret-file", paramLabel = "FILE", descriptionKey = "option.secret-file")
    private Path secretFile;

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
        try (JobStore open = signedIn(place(context).openThere(context))) {
            return work.apply(open);
        }
    }

    /** The store, made when it is not there, with whoever {@code --as} names signed in. */
    JobStore open(BatchContext context) {
        return signedIn(place(context).open(context));
    }

    /** Under whose key is saved: who is signed in, unless another key was named, which the store then refuses. */
    static String who(JobStore store, String named) {
        return NOBODY_NAMED.equals(named) ? store.accounts().signedIn().orElse(named) : named;
    }

    private JobStore signedIn(JobStore store) {
        try {
            if (as != null) {
                signIn(store);
            } else if (secretFile != null) {
                throw new BadUse(BatchText.of("as.whose"));
            }
            return store;
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    private void signIn(JobStore store) {
        List<Person> named = store.persons().values().stream().filter(p -> p.active() && !p.roles().isEmpty())
                .filter(p -> as.equals(p.key()) || as.equalsIgnoreCase(p.name())).toList();
        if (named.size() != 1) {
            throw new BadUse(named.isEmpty() ? BatchText.of("as.unknown", as)
                    : BatchText.of("as.several", as, String.join(", ", named.stream().map(Person::key).toList())));
        }
        char[] secret = SecretLine.read(secretFile, named.get(0).name());
        if (store.accounts().signIn(named.get(0).key(), secret) instanceof SignIn.Refused refused) {
            throw new BadUse(refused.message());
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

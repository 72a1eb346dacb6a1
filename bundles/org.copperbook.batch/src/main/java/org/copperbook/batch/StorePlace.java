package org.copperbook.batch;

import java.io.Console;
import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;

/** Where a store is: in a file or on a server. */
sealed interface StorePlace {

    /** Environment variable with the password; arguments can be read by everybody on the machine. */
    String PASSWORD = "COPPERBOOK_PASSWORD";

    /** Opens the store, made when it is not there. */
    JobStore open(BatchContext context);

    /** Opens a store that must be there. */
    JobStore openThere(BatchContext context);

    /** The file, or the local one that stands for a store on a server. */
    Path file();

    /** A place as it is written on the command line: a file, or postgresql://user@host/database. */
    static StorePlace parse(String text) {
        return text.startsWith("postgresql:") ? connection(text)
                : new InFile(Path.of(text).toAbsolutePath().normalize());
    }

    /** A place on a server. */
    static StorePlace connection(String text) {
        try {
            return new OnServer(ServerConnection.parse(text));
        } catch (IllegalArgumentException e) {
            throw new BadUse(BatchText.of("store.connection"));
        }
    }

    /** A store in a file. */
    record InFile(Path file) implements StorePlace {

        @Override
        public JobStore open(BatchContext context) {
            if (Files.isDirectory(file)) {
                throw new BadUse(BatchText.of("store.folder", file));
            }
            return context.stores().open(file);
        }

        @Override
        public JobStore openThere(BatchContext context) {
            if (!Files.exists(file)) {
                throw new BadUse(BatchText.of("store.missing", file));
            }
            return open(context);
        }

        @Override
        public String toString() {
            return file.toString();
        }
    }

    /** A store on a server. */
    record OnServer(ServerConnection at) implements StorePlace {

        @Override
        public JobStore open(BatchContext context) {
            return PostgresJobStore.open(at, password(context), StoreOptions.standard());
        }

        @Override
        public JobStore openThere(BatchContext context) {
            return open(context);
        }

        @Override
        public Path file() {
            return PostgresJobStore.standsFor(at);
        }

        /** The password, from the environment or asked for. */
        String password(BatchContext context) {
            String known = context.environment().apply(PASSWORD);
            if (known != null) {
                return known;
            }
            Console console = System.console();
            if (console == null) {
                throw new BadUse(BatchText.of("store.no-password", PASSWORD));
            }
            char[] typed = console.readPassword("%s", BatchText.of("store.password", at.user(), at.place()));
            return typed == null ? "" : new String(typed);
        }

        @Override
        public String toString() {
            return at.place();
        }
    }
}

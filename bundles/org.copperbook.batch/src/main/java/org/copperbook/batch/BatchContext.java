package org.copperbook.batch;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.store.JobStore;
import org.copperbook.store.UserFolders;
import org.copperbook.store.sqlite.SqliteJobStore;

/**
 * What the commands work with.
 *
 * @param stores       opens a store
 * @param out          results
 * @param err          what went wrong, and notes
 * @param defaultStore the store when none is named
 * @param demoData     folder of the demo workshop when none is named
 * @param json         records to JSON and back
 * @param environment  variables of the environment by name
 */
record BatchContext(StoreOpener stores, PrintStream out, PrintStream err, Path defaultStore, Path demoData,
        PartJson json, UnaryOperator<String> environment) {

    /** Opens the store in a file, and makes it when the file is not there. */
    @FunctionalInterface
    interface StoreOpener {
        JobStore open(Path file);
    }

    static BatchContext standard(PrintStream out, PrintStream err, Path demoData) {
        return new BatchContext(SqliteJobStore::open, out, err,
                UserFolders.current().store(), demoData, new PartJson(), System::getenv);
    }
}

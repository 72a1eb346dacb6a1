package org.copperbook.store.jdbc;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.copperbook.store.JobStore;

/**
 * What the store needs of a database engine. Every method throws {@link org.copperbook.store.StoreException} with a
 * message for people when the engine refuses.
 */
public interface Database extends AutoCloseable {

    /** Runs work in a transaction that holds the write lock from its start; what it did is durable on return. */
    <T> T write(Work<T> work);

    /** Runs work on a snapshot, without writing. */
    <T> T read(Work<T> work);

    /** Runs long work on a snapshot over a connection of its own, so that nobody waits for it. */
    <T> T readApart(Work<T> work);

    /** A number that differs from the last one whenever anybody has written in between. */
    long changeMark();

    /** What the engine finds wrong with its own pages and with the guards of append-only tables; one line each. */
    List<String> integrityProblems(Connection connection) throws SQLException;

    /** Makes sure that what was deleted is gone from the disk too, as far as the engine lets one; may do nothing. */
    default void scrub() {
    }

    /** Calls back, from a thread of its own, soon after anybody has written; an engine that cannot does nothing. */
    default void onNotice(Runnable look) {
    }

    /** Whether register_text lists the register's texts by every three characters; other engines have an index for it. */
    default boolean hasRegisterText() {
        return false;
    }

    /** Why nothing can be written, for people; nothing when it can. */
    default Optional<String> onlyReading() {
        return Optional.empty();
    }

    /**
     * Writes a complete, checked copy as a store in a file.
     *
     * @param store the store over this database
     */
    void backup(JobStore store, Path target);

    /** The file that holds the data; of a server the local one that stands for it. */
    Path file();

    @Override
    void close();
}

package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.locks.ReentrantLock;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** What a database has on every engine: one writer and one reader at a time, a layout that may be too new, an end. */
public abstract class EngineDatabase implements Database {

    private static final System.Logger LOG = System.getLogger(EngineDatabase.class.getName());

    /** Held while the writing connection is used. */
    protected final ReentrantLock writing = new ReentrantLock();
    /** Held while the reading connection is used. */
    protected final ReentrantLock reading = new ReentrantLock();
    private final Object place;
    private final StoreException newer;
    private volatile boolean closed;

    /**
     * @param place where the store is, in words for people
     * @param newer what to say when the layout is a newer one that can only be read; otherwise null
     */
    protected EngineDatabase(Object place, StoreException newer) {
        this.place = place;
        this.newer = newer;
    }

    @Override
    public final Optional<String> onlyReading() {
        return Optional.ofNullable(newer).map(StoreException::getMessage);
    }

    /** Refuses to write into a layout that this version does not know. */
    protected final void checkWritable() {
        if (newer != null) {
            throw new StoreException(newer.kind(), newer.getMessage(), newer);
        }
    }

    /** Refuses to go on after the end. */
    protected final void checkOpen() {
        if (closed) {
            throw new StoreException(StoreException.Kind.CLOSED, StoreText.of("closed", place));
        }
    }

    /**
     * Which guards of append-only tables are not there, one line each.
     *
     * @param triggers query for the names of the triggers that are there
     */
    protected static List<String> lacking(Connection c, Set<String> guards, String triggers) throws SQLException {
        Set<String> lacking = new TreeSet<>(guards);
        try (PreparedStatement q = c.prepareStatement(triggers); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                lacking.remove(r.getString(1));
            }
        }
        return lacking.stream().map(g -> StoreText.of("audit.guard", g)).toList();
    }

    @Override
    public void close() {
        writing.lock();
        reading.lock();
        try {
            closed = true;
            closeConnections();
        } finally {
            reading.unlock();
            writing.unlock();
        }
    }

    /** Closes the connections; nobody uses them any more. */
    protected abstract void closeConnections();

    /** Closes a connection that nothing hangs on any more; null is allowed. */
    public static void closeQuietly(Connection c) {
        if (c == null) {
            return;
        }
        try {
            c.close();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.DEBUG, "closing a connection failed", e);
        }
    }
}

package org.copperbook.store.postgres;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.jdbc.EngineDatabase;
import org.copperbook.store.jdbc.Migrations;
import org.copperbook.store.jdbc.Work;

/**
 * A store on a server: a connection that writes, one that reads beside it, one that listens, more for long work. A
 * connection that broke is made anew at the next use.
 *
 * <p>Writers take turns by the lock on the row of chain_head, taken before anything is read: under READ COMMITTED each
 * statement after it sees everything that was committed before.
 */
final class PostgresDatabase extends EngineDatabase {

    /** Channel on which the place of the last link is told. */
    static final String CHANNEL = "copperbook";

    private static final System.Logger LOG = System.getLogger(PostgresDatabase.class.getName());
    private static final Set<String> GUARDS = Set.of("revision_keeps_its_text", "revision_stays",
            "revision_is_not_emptied", "job_keeps_its_number", "job_stays", "job_is_not_emptied",
            "photo_keeps_its_bytes");
    private static final long PAUSE_MILLIS = 200;

    private final PostgresServer server;
    private final PostgresErrors errors;
    private final Path file;
    private Connection writer;
    private Connection reader;
    private Notices notices;

    private PostgresDatabase(PostgresServer server, Path file, Connection writer, StoreException newer) {
        super(server.at().place(), newer);
        this.server = server;
        this.errors = new PostgresErrors(server.at());
        this.file = file;
        this.writer = writer;
    }

    /** Opens the database and brings its layout up to date. */
    static PostgresDatabase open(PostgresServer server, Path file, Migrations migrations) {
        Connection writer = null;
        try {
            writer = server.writer();
            return new PostgresDatabase(server, file, writer,
                    new PostgresLayout(server.at(), migrations).bringUp(writer));
        } catch (SQLException e) {
            closeQuietly(writer);
            throw new PostgresErrors(server.at()).translate(e);
        } catch (RuntimeException e) {
            closeQuietly(writer);
            throw e;
        }
    }

    @Override
    public <T> T write(Work<T> work) {
        checkWritable();
        writing.lock();
        try {
            checkOpen();
            String transaction = begin();
            T result;
            try {
                result = work.on(writer);
                PostgresServer.text(writer, "SELECT pg_notify('" + CHANNEL + "', sequence || ' ' || hash)"
                        + " FROM chain_head WHERE id = 1");
            } catch (SQLException e) {
                rollBack(writer);
                throw errors.translate(e);
            } catch (RuntimeException e) {
                rollBack(writer);
                throw e;
            }
            try {
                writer.commit();
            } catch (SQLException e) {
                rollBack(writer);
                askWhetherKept(transaction, e);
            }
            return result;
        } finally {
            writing.unlock();
        }
    }

    /** Takes the lock; returns the transaction's number. A connection that broke since the last use is made anew. */
    private String begin() {
        boolean again = writer != null;
        while (true) {
            try {
                if (writer == null || writer.isClosed()) {
                    writer = server.writer();
                }
                String number = PostgresServer.text(writer,
                        "SELECT pg_current_xact_id()::text FROM chain_head WHERE id = 1 FOR UPDATE");
                if (number == null) {
                    rollBack(writer);
                    throw new StoreException(Kind.CORRUPT, StoreText.of("audit.noHead"));
                }
                return number;
            } catch (SQLException e) {
                if (writer != null) {
                    rollBack(writer);
                }
                if (!again || !PostgresErrors.lost(e)) {
                    throw errors.translate(e);
                }
                closeQuietly(writer);
                writer = null;
                again = false;
            }
        }
    }

    /**
     * A connection that breaks during the commit leaves it open whether the server kept it; the server knows by the
     * transaction's number. Returns when it was kept.
     */
    private void askWhetherKept(String transaction, SQLException broken) {
        if (!PostgresErrors.lost(broken)) {
            throw errors.translate(broken);
        }
        closeQuietly(writer);
        writer = null;
        long end = System.nanoTime() + server.patience().toNanos();
        while (System.nanoTime() < end) {
            try (Connection c = server.open("")) {
                String status = PostgresServer.text(c, "SELECT pg_xact_status('" + transaction + "'::xid8)");
                if ("committed".equals(status)) {
                    return;
                }
                if ("aborted".equals(status)) {
                    throw errors.translate(broken);
                }
            } catch (SQLException e) {
                LOG.log(System.Logger.Level.DEBUG, "the server does not answer yet", e);
            }
            pause();
        }
        throw new StoreException(Kind.MAYBE_KEPT, StoreText.of("server.unknown", server.at().place()), broken);
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public <T> T read(Work<T> work) {
        reading.lock();
        try {
            checkOpen();
            boolean again = reader != null;
            while (true) {
                try {
                    if (reader == null || reader.isClosed()) {
                        reader = server.reader();
                    }
                    return snapshot(reader, work);
                } catch (SQLException e) {
                    if (!again || !PostgresErrors.lost(e)) {
                        throw errors.translate(e);
                    }
                    closeQuietly(reader);
                    reader = null;
                    again = false;
                }
            }
        } finally {
            reading.unlock();
        }
    }

    @Override
    public <T> T readApart(Work<T> work) {
        checkOpen();
        try (Connection own = server.reader()) {
            return snapshot(own, work);
        } catch (SQLException e) {
            throw errors.translate(e);
        }
    }

    private static <T> T snapshot(Connection c, Work<T> work) throws SQLException {
        boolean done = false;
        try {
            T result = work.on(c);
            c.commit();
            done = true;
            return result;
        } finally {
            if (!done) {
                rollBack(c);
            }
        }
    }

    /** Both counts only grow, so their sum differs whenever either does. */
    @Override
    public long changeMark() {
        return read(c -> Long.parseLong(PostgresServer.text(c, "SELECT sequence + COALESCE((SELECT value::bigint"
                + " FROM setting WHERE name = 'people-changes'), 0) FROM chain_head WHERE id = 1")));
    }

    @Override
    public void onNotice(Runnable look) {
        notices = new Notices(server, CHANNEL, look);
        notices.start();
    }

    @Override
    public List<String> integrityProblems(Connection c) throws SQLException {
        List<String> found = new ArrayList<>();
        if ("off".equals(PostgresServer.text(c, "SHOW fsync"))) {
            found.add(StoreText.of("server.fsync"));
        }
        found.addAll(lacking(c, GUARDS, "SELECT t.tgname FROM pg_trigger t JOIN pg_class k ON k.oid ="
                + " t.tgrelid WHERE NOT t.tgisinternal AND t.tgenabled <> 'D' AND k.relnamespace = '"
                + PostgresServer.SCHEMA + "'::regnamespace"));
        return found;
    }

    @Override
    public void backup(JobStore store, Path target) {
        new PostgresBackup(store).write(target);
    }

    @Override
    public Path file() {
        return file;
    }

    @Override
    public void close() {
        if (notices != null) {
            notices.close();
        }
        super.close();
    }

    @Override
    protected void closeConnections() {
        closeQuietly(reader);
        closeQuietly(writer);
    }

    private static void rollBack(Connection c) {
        try {
            c.rollback();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.DEBUG, "the connection is gone, and the transaction with it", e);
        }
    }
}

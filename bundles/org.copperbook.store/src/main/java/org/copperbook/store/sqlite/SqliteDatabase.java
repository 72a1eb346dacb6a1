package org.copperbook.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;
import org.copperbook.store.jdbc.EngineDatabase;
import org.copperbook.store.jdbc.Migrations;
import org.copperbook.store.jdbc.Work;

/**
 * One SQLite file: a connection that writes, one that reads beside it, and more for long work.
 *
 * <p>Transactions are begun and ended by statements of our own. BEGIN IMMEDIATE takes the write lock at once, since a
 * transaction that reads first and writes later fails without waiting when somebody wrote in between; and the driver's
 * own commit would take the write lock again straight away and keep others out.
 */
final class SqliteDatabase extends EngineDatabase {

    private static final System.Logger LOG = System.getLogger(SqliteDatabase.class.getName());
    private static final Set<String> GUARDS = Set.of("revision_keeps_its_text", "revision_stays",
            "revision_is_not_replaced", "job_keeps_its_number", "job_stays", "job_is_not_replaced",
            "photo_keeps_its_bytes");
    private static final int MOST_PROBLEMS = 20;

    private final SqliteFile file;
    private final SqliteErrors errors;
    private final Connection writer;
    private final Connection reader;

    private SqliteDatabase(SqliteFile file, SqliteErrors errors, Connection writer, Connection reader,
            StoreException newer) {
        super(file.path(), newer);
        this.file = file;
        this.errors = errors;
        this.writer = writer;
        this.reader = reader;
    }

    /** Opens the file, made when it is not there, and brings its layout up to date. */
    static SqliteDatabase open(SqliteFile file, Migrations migrations) {
        SqliteErrors errors = new SqliteErrors(file.path());
        boolean fresh = !Files.exists(file.path());
        checkUsable(file.path(), errors);
        Connection writer = null;
        try {
            if (!fresh) {
                refuseOthers(file, errors);
            }
            writer = Patience.retry(file.patience(), file::writer);
            StoreException newer = migrate(writer, migrations);
            if (fresh) {
                DurableFile.forceFolder(file.path().getParent());
            }
            return new SqliteDatabase(file, errors, writer, file.reader(), newer);
        } catch (SQLException e) {
            closeQuietly(writer);
            throw errors.translate(e);
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
            return transaction(writer, "BEGIN IMMEDIATE", work);
        } finally {
            writing.unlock();
        }
    }

    @Override
    public <T> T read(Work<T> work) {
        reading.lock();
        try {
            return transaction(reader, "BEGIN", work);
        } finally {
            reading.unlock();
        }
    }

    @Override
    public <T> T readApart(Work<T> work) {
        checkOpen();
        try (Connection own = file.reader()) {
            return transaction(own, "BEGIN", work);
        } catch (SQLException e) {
            throw errors.translate(e);
        }
    }

    @Override
    public long changeMark() {
        reading.lock();
        try {
            checkOpen();
            return SqliteFile.number(reader, "PRAGMA data_version");
        } catch (SQLException e) {
            throw errors.translate(e);
        } finally {
            reading.unlock();
        }
    }

    @Override
    public List<String> integrityProblems(Connection c) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("PRAGMA integrity_check(" + MOST_PROBLEMS + ")");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                if (!"ok".equals(r.getString(1))) {
                    found.add(StoreText.of("audit.page", r.getString(1)));
                }
            }
        }
        found.addAll(lacking(c, GUARDS, "SELECT name FROM sqlite_schema WHERE type = 'trigger'"));
        return found;
    }

    /** Folds the log into the file and empties it; while somebody reads, the next one to close the file does. */
    @Override
    public void scrub() {
        writing.lock();
        try {
            checkOpen();
            SqliteFile.run(writer, "PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException e) {
            throw errors.translate(e);
        } finally {
            writing.unlock();
        }
    }

    @Override
    public boolean hasRegisterText() {
        return true;
    }

    @Override
    public void backup(JobStore store, Path target) {
        checkOpen();
        new SqliteBackup(file, errors).write(target);
    }

    @Override
    public Path file() {
        return file.path();
    }

    @Override
    protected void closeConnections() {
        closeQuietly(reader);
        closeQuietly(writer);
    }

    private <T> T transaction(Connection c, String begin, Work<T> work) {
        checkOpen();
        boolean done = false;
        boolean begun = false;
        try {
            step(c, begin);
            begun = true;
            T result = work.on(c);
            step(c, "COMMIT");
            done = true;
            return result;
        } catch (SQLException e) {
            throw errors.translate(e);
        } finally {
            if (begun && !done) {
                rollBack(c);
            }
        }
    }

    /** Prepared, because it is kept so from one transaction to the next. */
    private static void step(Connection c, String sql) throws SQLException {
        try (PreparedStatement s = c.prepareStatement(sql)) {
            s.execute();
        }
    }

    /** Some errors, such as a full disk, have ended the transaction already. */
    private static void rollBack(Connection c) {
        try {
            SqliteFile.run(c, "ROLLBACK");
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.DEBUG, "the transaction had already ended", e);
        }
    }

    private static void checkUsable(Path path, SqliteErrors errors) {
        Path folder = path.getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw errors.noFolder(e);
        }
        boolean there = Files.exists(path);
        if (!Files.isWritable(folder) || there && !Files.isWritable(path)) {
            throw there ? errors.readOnly() : errors.noFolder(null);
        }
    }

    /** A file of another application, or none of SQLite's, is left as it is. */
    private static void refuseOthers(SqliteFile file, SqliteErrors errors) throws SQLException {
        try (Connection c = file.open()) {
            boolean empty = SqliteFile.number(c, "SELECT COUNT(*) FROM sqlite_schema") == 0;
            if (!empty && SqliteFile.number(c, "PRAGMA application_id") != SqliteFile.APPLICATION_ID) {
                throw errors.notAStore();
            }
        }
    }

    /** Brings the layout up to date; of a newer one it says so and leaves it alone. */
    private static StoreException migrate(Connection writer, Migrations migrations) throws SQLException {
        SqliteFile.run(writer, "BEGIN IMMEDIATE");
        boolean done = false;
        try {
            SqliteFile.run(writer, "PRAGMA application_id = " + SqliteFile.APPLICATION_ID);
            migrations.apply(writer, " STRICT");
            SqliteFile.run(writer, "COMMIT");
            done = true;
            return null;
        } catch (StoreException e) {
            if (e.kind() == StoreException.Kind.NEWER_SCHEMA) {
                return e;
            }
            throw e;
        } finally {
            if (!done) {
                rollBack(writer);
            }
        }
    }
}

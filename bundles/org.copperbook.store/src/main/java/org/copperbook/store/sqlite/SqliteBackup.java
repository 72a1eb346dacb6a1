package org.copperbook.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;

/**
 * Copies a store while others write: VACUUM INTO a name beside the target on a connection of its own, check, force to
 * the disk, then rename. The driver's own backup starts again at every write of others and may never end.
 */
final class SqliteBackup {

    private final SqliteFile file;
    private final SqliteErrors errors;

    SqliteBackup(SqliteFile file, SqliteErrors errors) {
        this.file = file;
        this.errors = errors;
    }

    void write(Path target) {
        Path whole = target.toAbsolutePath().normalize();
        if (Files.exists(whole)) {
            throw new StoreException(Kind.ALREADY_THERE, StoreText.of("backup.there", whole));
        }
        Path beside = whole.resolveSibling("." + whole.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.createDirectories(whole.getParent());
            try {
                copy(beside);
                check(beside);
                DurableFile.force(beside);
                DurableFile.moveInto(beside, whole);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("backup.failed", whole, e.getMessage()), e);
        }
    }

    private void copy(Path beside) {
        try (Connection c = file.open(); PreparedStatement v = c.prepareStatement("VACUUM INTO ?")) {
            v.setString(1, beside.toString());
            v.execute();
        } catch (SQLException e) {
            StoreException told = errors.translate(e);
            throw new StoreException(told.kind(), StoreText.of("backup.failed", beside, told.getMessage()), e);
        }
    }

    private void check(Path beside) {
        SqliteFile copy = new SqliteFile(beside, file.patience(), 0);
        try (Connection c = copy.reader(); PreparedStatement q = c.prepareStatement("PRAGMA integrity_check(1)");
                ResultSet r = q.executeQuery()) {
            if (!r.next() || !"ok".equals(r.getString(1))) {
                throw new StoreException(Kind.CORRUPT, StoreText.of("backup.damaged", file.path()));
            }
        } catch (SQLException e) {
            throw new StoreException(Kind.CORRUPT, StoreText.of("backup.damaged", file.path()), e);
        }
    }
}

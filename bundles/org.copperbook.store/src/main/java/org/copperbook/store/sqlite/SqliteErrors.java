package org.copperbook.store.sqlite;

import java.nio.file.Path;
import java.sql.SQLDataException;
import java.sql.SQLException;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.sqlite.SQLiteException;

/** Says in plain words what the engine refused. */
final class SqliteErrors {

    private final Path file;

    SqliteErrors(Path file) {
        this.file = file;
    }

    StoreException translate(SQLException e) {
        Kind kind = kind(e);
        String message = switch (kind) {
            case LOCKED -> StoreText.of("locked", file);
            case READ_ONLY -> StoreText.of("readOnly", file);
            case DISK_FULL -> StoreText.of("diskFull", file);
            case CORRUPT -> StoreText.of("corrupt", file);
            case NOT_A_STORE -> StoreText.of("notAStore", file);
            default -> StoreText.of("io", file, e.getMessage());
        };
        return new StoreException(kind, message, e);
    }

    StoreException readOnly() {
        return new StoreException(Kind.READ_ONLY, StoreText.of("readOnly", file));
    }

    StoreException noFolder(Exception cause) {
        return new StoreException(Kind.READ_ONLY, StoreText.of("noFolder", file.getParent(), file.getFileName()),
                cause);
    }

    StoreException notAStore() {
        return new StoreException(Kind.NOT_A_STORE, StoreText.of("notAStore", file));
    }

    private static final int PRIMARY = 0xff;

    static Kind kind(SQLException e) {
        if (e instanceof SQLDataException) {
            return Kind.CORRUPT;
        }
        if (!(e instanceof SQLiteException s) || s.getResultCode() == null) {
            return Kind.IO;
        }
        // The low byte of an extended result code is the primary one.
        return switch (s.getResultCode().code & PRIMARY) {
            case 5, 6 -> Kind.LOCKED;
            case 8, 3, 14, 23 -> Kind.READ_ONLY;
            case 13 -> Kind.DISK_FULL;
            case 11 -> Kind.CORRUPT;
            case 26 -> Kind.NOT_A_STORE;
            default -> Kind.IO;
        };
    }
}

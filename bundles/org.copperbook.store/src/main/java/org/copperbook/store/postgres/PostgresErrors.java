package org.copperbook.store.postgres;

import java.sql.SQLException;
import javax.net.ssl.SSLException;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/** Says in plain words what the server refused. */
final class PostgresErrors {

    private final ServerConnection at;

    PostgresErrors(ServerConnection at) {
        this.at = at;
    }

    StoreException translate(SQLException e) {
        Kind kind = kind(e);
        String state = state(e);
        String place = at.place();
        String message = switch (kind) {
            case UNREACHABLE -> tls(e) ? StoreText.of("server.tls", place, e.getMessage())
                    : state.equals("53300") ? StoreText.of("server.full", place)
                    : StoreText.of("server.down", place, e.getMessage());
            case NO_ENTRY -> state.equals("3D000") ? StoreText.of("server.noDatabase", place)
                    : StoreText.of("server.password", place, at.user());
            case FORBIDDEN -> StoreText.of("server.forbidden", place, at.user(), e.getMessage());
            case DISK_FULL -> StoreText.of("server.diskFull", place);
            case LOCKED -> StoreText.of("server.locked", place);
            case READ_ONLY -> StoreText.of("server.readOnly", place);
            case CORRUPT -> StoreText.of("server.corrupt", place, e.getMessage());
            case BAD_TEXT -> StoreText.of("server.badText", place);
            default -> StoreText.of("server.io", place, e.getMessage());
        };
        return new StoreException(kind, message, e);
    }

    /** After the classes of the server's manual, appendix "PostgreSQL Error Codes". */
    static Kind kind(SQLException e) {
        String state = state(e);
        // 08004 is the server's "rejected", which the driver also says when it has no password for a server that wants one,
        // and when the server has no encryption.
        if (state.startsWith("08") && (!state.equals("08004") || tls(e))) {
            return Kind.UNREACHABLE;
        }
        return switch (state) {
            case "57P01", "57P02", "57P03", "57P05", "53300", "25P03" -> Kind.UNREACHABLE;
            case "08004", "28P01", "28000", "3D000" -> Kind.NO_ENTRY;
            case "42501" -> Kind.FORBIDDEN;
            case "53100" -> Kind.DISK_FULL;
            case "55P03", "40001", "40P01", "57014" -> Kind.LOCKED;
            case "25006" -> Kind.READ_ONLY;
            case "XX001", "XX002" -> Kind.CORRUPT;
            case "22021" -> Kind.BAD_TEXT;
            default -> Kind.IO;
        };
    }

    /** Whether the connection is gone, so that a new one may help. */
    static boolean lost(SQLException e) {
        return kind(e) == Kind.UNREACHABLE;
    }

    private static String state(SQLException e) {
        return e.getSQLState() == null ? "" : e.getSQLState();
    }

    private static boolean tls(SQLException e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof SSLException || t.getMessage() != null && t.getMessage().contains("does not support SSL")) {
                return true;
            }
        }
        return false;
    }
}

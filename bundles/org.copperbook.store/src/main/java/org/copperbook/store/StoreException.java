package org.copperbook.store;

import java.util.Objects;

/**
 * The store could not do what was asked. The message is for people: what happened, what was kept, what to do. Whatever
 * was acknowledged before stays as it was, and nothing of the failed step remains.
 */
public class StoreException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Reasons a caller may want to tell apart. */
    public enum Kind {
        /** Another program held the store for longer than we waited. */
        LOCKED,
        /** The file or its folder may not be written. */
        READ_ONLY,
        DISK_FULL,
        /** The file is damaged. */
        CORRUPT,
        /** The file is not a Copperbook store. */
        NOT_A_STORE,
        /** Written by a newer version of Copperbook. */
        NEWER_SCHEMA,
        /** The file's layout was not made by the steps this version knows. */
        FOREIGN_SCHEMA,
        /** No such job or part. */
        NOT_FOUND,
        /** A job with this number or key is in the store already. */
        ALREADY_THERE,
        /** Somebody else saved the part in between; see {@link ConflictException}. */
        CONFLICT,
        /** A kept record cannot be read by this version. */
        UNREADABLE_RECORD,
        /** The number pattern of the workshop's settings cannot be used. */
        BAD_NUMBER_SERIES,
        /** The server does not answer, or the connection broke; nothing was kept. */
        UNREACHABLE,
        /** The connection broke while the server was making a change durable: it may have been kept or not. */
        MAYBE_KEPT,
        /** The server does not let this user in: name, password, or no such database. */
        NO_ENTRY,
        /** The server lets this user in, and forbids this step. */
        FORBIDDEN,
        /** Nobody is signed in, or who is has not the right; the message says who has. */
        NOT_ALLOWED,
        /** The new secret is too short or too long. */
        BAD_SECRET,
        /** Stock cannot be moved or described so; the message says what can be done. */
        STOCK,
        /** A text holds a character that this engine cannot keep. */
        BAD_TEXT,
        /** Reading or writing failed for another reason. */
        IO,
        CLOSED
    }

    private final Kind kind;

    public StoreException(Kind kind, String message) {
        this(kind, message, null);
    }

    public StoreException(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = Objects.requireNonNull(kind, "kind");
    }

    public Kind kind() {
        return kind;
    }

    /** Whether the server does not answer, whatever became of the change. */
    public boolean silent() {
        return kind == Kind.UNREACHABLE || kind == Kind.MAYBE_KEPT;
    }
}

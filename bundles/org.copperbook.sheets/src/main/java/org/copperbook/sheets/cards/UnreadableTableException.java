package org.copperbook.sheets.cards;

/** A file cannot be read as a table; the message says why and what to do, for a person. */
public final class UnreadableTableException extends Exception {
    private static final long serialVersionUID = 1L;

    public UnreadableTableException(String message) {
        super(message);
    }

    public UnreadableTableException(String message, Throwable cause) {
        super(message, cause);
    }
}

package org.copperbook.sheets.log;

/** A file that cannot be read as a log; the message says why and what to do, for the person who chose it. */
public final class UnreadableLogException extends Exception {

    private static final long serialVersionUID = 1L;

    public UnreadableLogException(String message) {
        super(message);
    }

    public UnreadableLogException(String message, Throwable cause) {
        super(message, cause);
    }
}

package org.copperbook.desk.shell;

/** The demo workshop's folder cannot be read; the message says which file and why. */
final class DemoUnreadable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    DemoUnreadable(String message, Throwable cause) {
        super(message, cause);
    }
}

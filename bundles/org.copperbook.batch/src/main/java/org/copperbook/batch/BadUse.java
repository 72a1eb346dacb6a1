package org.copperbook.batch;

/** A command that cannot be done as asked: bad use or bad input. The message is one line that names place and mend. */
final class BadUse extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BadUse(String message) {
        super(message);
    }
}

package org.copperbook.batch;

/** Exit codes of the commands. */
final class ExitCode {

    static final int DONE = 0;
    /** A check failed: a verdict fails, or the store does not hold together. */
    static final int CHECK_FAILED = 1;
    /** Bad use or bad input; nothing was changed. */
    static final int BAD_USE = 2;

    private ExitCode() {
    }
}

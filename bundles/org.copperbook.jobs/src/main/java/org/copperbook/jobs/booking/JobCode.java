package org.copperbook.jobs.booking;

import java.util.Optional;

/**
 * What the QR code on a tag or job card says: a mark of its own, then the job number. The mark is of capitals that lie on
 * the same keys in the usual Latin layouts, since most readers send codes as key presses.
 */
public final class JobCode {

    /** Begins every code. */
    public static final String PREFIX = "CPBJOB";

    private JobCode() {
    }

    /**
     * The text of the code of a job.
     *
     * @throws IllegalArgumentException when the job has no number yet
     */
    public static String of(String number) {
        if (number == null || number.isBlank()) {
            throw new IllegalArgumentException("a job without a number has no code");
        }
        return PREFIX + number.strip();
    }

    /** The job number in a text that was read, if it is a code of ours. */
    public static Optional<String> number(String read) {
        return Optional.ofNullable(read).map(String::strip).filter(t -> t.startsWith(PREFIX))
                .map(t -> t.substring(PREFIX.length()).strip()).filter(n -> !n.isEmpty());
    }
}

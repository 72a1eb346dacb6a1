package org.copperbook.store.sqlite;

import java.sql.SQLException;
import java.time.Duration;
import org.copperbook.store.StoreException;

/** Tries again while another program holds the file, for the few steps in which the engine itself does not wait. */
final class Patience {

    private static final long PAUSE_MILLIS = 20;

    private Patience() {
    }

    /**
     * A step that can meet a lock.
     *
     * @param <T> what comes out of it
     */
    @FunctionalInterface
    interface Step<T> {
        T run() throws SQLException;
    }

    static <T> T retry(Duration atMost, Step<T> step) throws SQLException {
        long end = System.nanoTime() + atMost.toNanos();
        while (true) {
            try {
                return step.run();
            } catch (SQLException e) {
                if (SqliteErrors.kind(e) != StoreException.Kind.LOCKED || System.nanoTime() > end) {
                    throw e;
                }
            }
            try {
                Thread.sleep(PAUSE_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new SQLException("interrupted while another program held the file", e);
            }
        }
    }
}

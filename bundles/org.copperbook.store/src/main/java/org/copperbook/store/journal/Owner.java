package org.copperbook.store.journal;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The running program an entry belongs to. The start time tells it from a later one with the same process number.
 *
 * @param pid           process number
 * @param startedMillis when it was started, 0 where the system does not tell
 */
record Owner(long pid, long startedMillis) {

    private static final Pattern TEXT = Pattern.compile("(\\d{1,18})-(\\d{1,18})");

    static Owner self() {
        return of(ProcessHandle.current());
    }

    static Optional<Owner> parse(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches() ? Optional.of(new Owner(Long.parseLong(m.group(1)), Long.parseLong(m.group(2))))
                : Optional.empty();
    }

    boolean alive() {
        return ProcessHandle.of(pid).filter(ProcessHandle::isAlive).map(Owner::of).filter(this::equals).isPresent();
    }

    @Override
    public String toString() {
        return pid + "-" + startedMillis;
    }

    private static Owner of(ProcessHandle process) {
        return new Owner(process.pid(), process.info().startInstant().map(Instant::toEpochMilli).orElse(0L));
    }
}

package org.copperbook.desk.shell;

import java.util.Locale;
import java.util.Optional;
import org.copperbook.desk.text.DeskWords;
import org.eclipse.swt.SWTError;

/** Tells in words why no window can open on this machine. */
final class MissingDisplay {

    /**
     * Exit code when no window can open, so that a script can go on without one: "service unavailable" among the
     * conventional codes of sysexits.h. The platform keeps 23 and 24 for being started again.
     */
    static final int EXIT_CODE = 69;

    private MissingDisplay() {
    }

    /** What is missing, if the failure means that no window can open here; else it is another failure. */
    static Optional<String> in(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof UnsatisfiedLinkError || t instanceof NoClassDefFoundError
                    && String.valueOf(t.getMessage()).contains("org.eclipse.swt")) {
                return Optional.of(DeskWords.text(isLinux() ? "missing.gtk" : "missing.swt"));
            }
            if (t instanceof SWTError) {
                return Optional.of(DeskWords.text(isLinux() ? "missing.display" : "missing.swt"));
            }
        }
        return Optional.empty();
    }

    private static boolean isLinux() {
        return System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("linux");
    }
}

package org.copperbook.desk.tests.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;

/** Listens for errors that are logged and not shown. */
final class ErrorLog implements AutoCloseable {

    private final List<String> errors = Collections.synchronizedList(new ArrayList<>());
    private final ILogListener listener = (status, plugin) -> {
        if (status.getSeverity() == IStatus.ERROR) {
            errors.add(plugin + ": " + status.getMessage() + " " + status.getException());
        }
    };

    ErrorLog() {
        Platform.addLogListener(listener);
    }

    List<String> errors() {
        return List.copyOf(errors);
    }

    @Override
    public void close() {
        Platform.removeLogListener(listener);
    }
}

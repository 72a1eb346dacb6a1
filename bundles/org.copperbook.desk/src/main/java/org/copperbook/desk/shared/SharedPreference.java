package org.copperbook.desk.shared;

import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** Which server the window opens instead of the file on this computer; the password is not part of it. */
public final class SharedPreference {

    private static final String USED = "shared.used";
    private static final String CONNECTION = "shared.connection";

    private SharedPreference() {
    }

    /** The server to open; empty when it is the file. */
    public static Optional<ServerConnection> chosen() {
        return node().getBoolean(USED, false) ? known() : Optional.empty();
    }

    /** The server last entered, whether it is used or not. */
    public static Optional<ServerConnection> known() {
        String text = node().get(CONNECTION, "");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ServerConnection.parse(text));
        } catch (IllegalArgumentException e) {
            ILog.of(SharedPreference.class).warn("the connection in the preferences cannot be read: " + text, e);
            return Optional.empty();
        }
    }

    /** Opens a server from the next start on. */
    public static void choose(ServerConnection at) throws BackingStoreException {
        node().put(CONNECTION, at.toString());
        node().putBoolean(USED, true);
        node().flush();
    }

    /** Opens the file on this computer from the next start on; the server stays known. */
    public static void chooseFile() throws BackingStoreException {
        node().putBoolean(USED, false);
        node().flush();
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(Desk.BUNDLE);
    }
}

package org.copperbook.desk.shared;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Path;
import java.util.Map;
import org.copperbook.store.UserFolders;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.equinox.security.storage.EncodingUtils;
import org.eclipse.equinox.security.storage.ISecurePreferences;
import org.eclipse.equinox.security.storage.SecurePreferencesFactory;
import org.eclipse.equinox.security.storage.StorageException;
import org.eclipse.equinox.security.storage.provider.IProviderHints;

/**
 * Passwords of servers in the platform's secure storage, in a file of the user's folder. What encrypts them is the
 * password provider with the highest priority: one that a platform brings, else {@link KeyFilePasswords}.
 */
public final class ServerPasswords {

    private static final String PASSWORD = "password";

    private final Path file;

    /** Passwords in a file, made when the first one is kept. */
    public ServerPasswords(Path file) {
        this.file = file;
    }

    /** Those of this user. */
    public static ServerPasswords current() {
        return new ServerPasswords(UserFolders.current().home().resolve("secure-storage"));
    }

    /**
     * The password of a connection; empty when none is kept.
     *
     * @throws StorageException when it is there and cannot be read, as after the key was lost
     */
    public String of(ServerConnection at) throws IOException, StorageException {
        return node(at).get(PASSWORD, "");
    }

    /** Keeps the password of a connection, encrypted; an empty one is forgotten. */
    public void keep(ServerConnection at, String password) throws IOException, StorageException {
        ISecurePreferences node = node(at);
        if (password.isEmpty()) {
            node.remove(PASSWORD);
        } else {
            node.put(PASSWORD, password, true);
        }
        node.flush();
    }

    private ISecurePreferences node(ServerConnection at) throws IOException {
        // The platform takes the address as it is and would make a folder with %20 in its name.
        URL address = new URL("file", null, file.toAbsolutePath().toString());
        ISecurePreferences root = SecurePreferencesFactory.open(address,
                Map.of(IProviderHints.PROMPT_USER, Boolean.FALSE));
        if (root == null) {
            throw new IOException(file.toString());
        }
        return root.node("servers").node(EncodingUtils.encodeSlashes(at.user() + "@" + at.place()));
    }
}

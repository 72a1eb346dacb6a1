package org.copperbook.store.postgres;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Objects;

/**
 * Where a shared store is and who asks for it; the password is no part of it.
 *
 * @param host     name or address of the server
 * @param port     its port
 * @param database database on it
 * @param user     name at the server
 * @param tls      how the way there is protected
 */
public record ServerConnection(String host, int port, String database, String user, Tls tls) {

    /** The port servers listen at unless told otherwise. */
    public static final int USUAL_PORT = 5432;

    private static final String SCHEME = "postgresql";
    private static final String TLS = "tls=";
    private static final int LAST_PORT = 65_535;

    /** How the way to the server is protected. */
    public enum Tls {
        /** Plain; only where nobody else can listen. */
        OFF("disable"),
        /** Encrypted, whoever answers. */
        ENCRYPTED("require"),
        /** Encrypted, and the server's certificate is checked with its name. */
        VERIFIED("verify-full");

        private final String mode;

        Tls(String mode) {
            this.mode = mode;
        }

        /** The driver's word for it. */
        String mode() {
            return mode;
        }
    }

    /**
     * Checks that nothing is empty.
     *
     * @throws IllegalArgumentException when host, database or user is empty, or the port is none
     */
    public ServerConnection {
        Objects.requireNonNull(tls, "tls");
        if (host.isBlank() || database.isBlank() || user.isBlank() || port < 1 || port > LAST_PORT) {
            throw new IllegalArgumentException("a connection needs host, port, database and user");
        }
    }

    /**
     * Reads {@code postgresql://user@host:port/database?tls=verified}; port and tls may be left out. Without tls the
     * connection is encrypted and the server's certificate checked, unless the host is this machine.
     *
     * @throws IllegalArgumentException when it is written in another way, or carries a password
     */
    public static ServerConnection parse(String text) {
        URI uri;
        try {
            uri = new URI(text.strip());
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(text, e);
        }
        String user = uri.getUserInfo();
        if (!SCHEME.equals(uri.getScheme()) || user == null || user.contains(":") || uri.getHost() == null
                || uri.getPath() == null || uri.getPath().length() < 2) {
            throw new IllegalArgumentException(text);
        }
        int port = uri.getPort() < 0 ? USUAL_PORT : uri.getPort();
        return new ServerConnection(uri.getHost(), port, uri.getPath().substring(1), user,
                tls(uri.getQuery(), uri.getHost()));
    }

    private static Tls tls(String query, String host) {
        if (query == null) {
            return host.equals("localhost") || host.equals("127.0.0.1") || host.equals("[::1]") ? Tls.OFF : Tls.VERIFIED;
        }
        if (!query.startsWith(TLS)) {
            throw new IllegalArgumentException(query);
        }
        return Tls.valueOf(query.substring(TLS.length()).toUpperCase(java.util.Locale.ROOT));
    }

    /** The place without the user, for people. */
    public String place() {
        return host + ":" + port + "/" + database;
    }

    /** The same as {@link #parse} reads. */
    @Override
    public String toString() {
        return SCHEME + "://" + user + "@" + place() + "?" + TLS + tls.name().toLowerCase(java.util.Locale.ROOT);
    }
}

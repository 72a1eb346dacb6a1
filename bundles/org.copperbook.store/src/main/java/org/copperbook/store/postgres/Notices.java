package org.copperbook.store.postgres;

import java.sql.Connection;
import java.sql.SQLException;
import org.copperbook.store.jdbc.EngineDatabase;
import org.postgresql.PGConnection;

/** Hears on a connection of its own that somebody wrote. After a break it connects again and takes it for a notice. */
final class Notices {

    private static final System.Logger LOG = System.getLogger(Notices.class.getName());
    private static final int WAIT_MILLIS = 1_000;
    private static final int PAUSE_MILLIS = 500;

    private final PostgresServer server;
    private final String channel;
    private final Runnable look;
    private final Thread thread;
    private Connection connection;
    private boolean ended;

    Notices(PostgresServer server, String channel, Runnable look) {
        this.server = server;
        this.channel = channel;
        this.look = look;
        thread = new Thread(this::listen, "copperbook-notices");
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    private void listen() {
        while (connect()) {
            try {
                PostgresServer.run(connection, "LISTEN " + channel);
                // What was written before this moment was not heard of.
                look.run();
                PGConnection hearing = connection.unwrap(PGConnection.class);
                while (!ended()) {
                    if (hearing.getNotifications(WAIT_MILLIS).length > 0) {
                        look.run();
                    }
                }
            } catch (SQLException e) {
                LOG.log(System.Logger.Level.DEBUG, "the listening connection broke", e);
            }
        }
    }

    private boolean connect() {
        while (!ended()) {
            try {
                Connection made = server.open("");
                synchronized (this) {
                    EngineDatabase.closeQuietly(connection);
                    connection = made;
                    if (ended) {
                        EngineDatabase.closeQuietly(made);
                    }
                }
                return !ended();
            } catch (SQLException e) {
                LOG.log(System.Logger.Level.DEBUG, "nothing to listen to yet", e);
            }
            try {
                Thread.sleep(PAUSE_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
        return false;
    }

    private synchronized boolean ended() {
        return ended;
    }

    synchronized void close() {
        ended = true;
        thread.interrupt();
        if (connection == null) {
            return;
        }
        try {
            // Closing would wait until the listening thread lets go.
            connection.abort(Runnable::run);
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.DEBUG, "the listening connection was gone already", e);
        }
    }
}

package org.copperbook.store.engines;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.copperbook.store.postgres.ServerConnection;
import org.junit.jupiter.api.Assumptions;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A PostgreSQL server of our own on the loopback, from the system's package, in a temporary folder. Without the package
 * tests are left out, on a build server they fail.
 */
public final class TestServer implements AutoCloseable {

    /** The superuser of the server. */
    public static final String USER = "copper";
    /** Their password. */
    public static final String PASSWORD = "only for this test";

    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");
    private static final int STARTING_SECONDS = 60;
    /** A database is 7 MB on the disk, so that tests take turns with a few; no test has more stores open at once. */
    private static final int DATABASES = 12;
    private static TestServer shared;

    private final Path folder;
    private final Path programs;
    private final int port;
    private Process process;
    private int given;

    private TestServer(Path programs) throws IOException, InterruptedException {
        this.programs = programs;
        folder = Files.createTempDirectory("copperbook-server");
        port = freePort();
        Path secret = Files.writeString(folder.resolve("secret"), PASSWORD);
        if (root()) {
            finish("chown", "-R", "postgres", folder.toString());
        }
        finish(asUser(programs.resolve("initdb").toString(), "-D", data(), "-U", USER, "--auth=scram-sha-256",
                "--pwfile=" + secret, "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync"));
        start();
    }

    /** The server that most tests share; ended with the tests. */
    public static synchronized TestServer shared() {
        if (shared == null) {
            shared = own();
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
        }
        return shared;
    }

    /** A server for one test alone, which may stop it. */
    public static TestServer own() {
        Path programs = programs();
        if (programs == null) {
            if ("true".equals(System.getenv("CI"))) {
                throw new AssertionError("no PostgreSQL in " + INSTALLED + ": install the package postgresql");
            }
            Assumptions.abort("no PostgreSQL in " + INSTALLED);
        }
        try {
            return new TestServer(programs);
        } catch (IOException e) {
            throw new AssertionError("the test's server could not be started", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static Path programs() {
        if (!Files.isDirectory(INSTALLED)) {
            return null;
        }
        try (Stream<Path> versions = Files.list(INSTALLED)) {
            return versions.map(v -> v.resolve("bin")).filter(b -> Files.isExecutable(b.resolve("initdb")))
                    .max(Comparator.comparingInt(b -> Integer.parseInt(b.getParent().getFileName().toString())))
                    .orElse(null);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Starts it again after {@link #stop} or {@link #kill}. */
    public void start() throws IOException, InterruptedException {
        process = new ProcessBuilder(asUser(programs.resolve("postgres").toString(), "-D", data(), "-p",
                Integer.toString(port), "-c", "listen_addresses=127.0.0.1", "-c", "unix_socket_directories=" + folder,
                "-c", "max_connections=250", "-c", "max_locks_per_transaction=256", "-c", "shared_buffers=32MB", "-c", "lc_messages=C"))
                .redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile()).start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(STARTING_SECONDS);
        while (true) {
            try (Connection c = connect("postgres", USER, PASSWORD)) {
                return;
            } catch (SQLException e) {
                if (!process.isAlive() || System.nanoTime() > end) {
                    throw new AssertionError("the server did not start: "
                            + Files.readString(folder.resolve("log")), e);
                }
                Thread.sleep(50);
            }
        }
    }

    /** Ends it as an administrator in a hurry does: every connection is broken off. */
    public void stop() throws IOException, InterruptedException {
        finish(asUser(programs.resolve("pg_ctl").toString(), "-D", data(), "-m", "fast", "-w", "stop"));
        process.waitFor();
    }

    /** Ends it as kill -9 does, with all its helpers. */
    public void kill() throws IOException, InterruptedException {
        finish(asUser(programs.resolve("pg_ctl").toString(), "-D", data(), "-m", "immediate", "-w", "stop"));
        process.waitFor();
    }

    /** An empty database; whoever had it before has lost it. */
    public synchronized ServerConnection newDatabase() throws SQLException {
        String name = "shop" + given % DATABASES;
        if (given++ < DATABASES) {
            sql("postgres", "CREATE DATABASE " + name);
        } else {
            sql(name, "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database()"
                    + " AND pid <> pg_backend_pid()", "DROP SCHEMA IF EXISTS copperbook CASCADE");
        }
        return at(name, USER);
    }

    /** A connection's address on this server. */
    public ServerConnection at(String database, String user) {
        return new ServerConnection("127.0.0.1", port, database, user, ServerConnection.Tls.OFF);
    }

    /** A connection behind the store's back. */
    public Connection connect(String database, String user, String password) throws SQLException {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setServerNames(new String[] {"127.0.0.1"});
        source.setPortNumbers(new int[] {port});
        source.setDatabaseName(database);
        source.setUser(user);
        source.setPassword(password);
        source.setCurrentSchema("copperbook");
        return source.getConnection();
    }

    /** Runs statements as superuser. */
    public void sql(String database, String... statements) throws SQLException {
        try (Connection c = connect(database, USER, PASSWORD); Statement s = c.createStatement()) {
            for (String sql : statements) {
                s.execute(sql);
            }
        }
    }

    @Override
    public void close() {
        try {
            if (process.isAlive()) {
                kill();
            }
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(p);
                }
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private static int freePort() throws IOException {
        try (ServerSocket s = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return s.getLocalPort();
        }
    }

    private static boolean root() {
        return "root".equals(System.getProperty("user.name"));
    }

    /** The server refuses to run as root. */
    private static List<String> asUser(String... command) {
        List<String> whole = new ArrayList<>();
        if (root()) {
            whole.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups", "--"));
        }
        whole.addAll(List.of(command));
        return whole;
    }

    private void finish(String... command) throws IOException, InterruptedException {
        finish(List.of(command));
    }

    private void finish(List<String> command) throws IOException, InterruptedException {
        Path log = Files.createTempFile("copperbook-server", ".log");
        try {
            Process p = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile())
                    .directory(Path.of("/").toFile()).start();
            if (p.waitFor() != 0) {
                throw new AssertionError(command + ": " + Files.readString(log));
            }
        } finally {
            Files.delete(log);
        }
    }
}

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Runs the window tests inside a product folder, as a user's copy of it would run, and leaves the file {@code passed}
 * in the work folder only if tests ran and all passed. It always ends with exit code 0: the build looks for the file
 * after it, and so can fail with one clear line.
 *
 * <p>On Linux it starts an X server and a window manager of its own, on a free display, and stops both by their process
 * ids. Where one of them or GTK 3 is missing it fails and says so: a window that could not be opened is not a window
 * that works.
 *
 * <p>Started from its source by the build: {@code java WindowTestRun.java <product folder> <folder of test bundles>
 * <work folder> <minutes allowed> <test class or *>}.
 */
public final class WindowTestRun {

    private static final String APPLICATION = "org.copperbook.desk.tests.run";
    private static final String ALL = "*";
    /** The tests that need no start of their own, in shares small enough to keep both lanes busy to the end. */
    private static final List<String> SHARES = List.of("share-1-of-4", "share-2-of-4", "share-3-of-4", "share-4-of-4");
    private static final int MOST_LANES = 2;
    /** Tests of these words run in starts of their own, see the annotation OwnStart. */
    private static final String SERVER_START = "server-start";
    private static final List<String> OWN_STARTS = List.of("own-start", "first-start", "reading-start", SERVER_START);
    private static final Path POSTGRES = Path.of("/usr/lib/postgresql");
    private static final String PACKAGES = "xvfb openbox libgtk-3-0 librsvg2-common";
    private static final boolean LINUX = System.getProperty("os.name").equalsIgnoreCase("linux");
    private static final boolean MAC = System.getProperty("os.name").startsWith("Mac");

    private final Path product;
    private final Path testBundles;
    private final Path work;
    private final long minutes;
    private final String only;
    private final List<Process> started = new ArrayList<>();

    private WindowTestRun(String[] arguments) {
        product = Path.of(arguments[0]).toAbsolutePath();
        testBundles = Path.of(arguments[1]).toAbsolutePath();
        work = Path.of(arguments[2]).toAbsolutePath();
        minutes = Long.parseLong(arguments[3]);
        only = arguments[4];
    }

    public static void main(String[] arguments) throws Exception {
        // The tests speak UTF-8 whatever the language of this machine is.
        System.setOut(new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8));
        WindowTestRun run = new WindowTestRun(arguments);
        Runtime.getRuntime().addShutdownHook(new Thread(run::stopAll));
        try {
            if (run.allPassed()) {
                Files.createFile(run.work.resolve("passed"));
            }
        } catch (CannotRun reason) {
            System.err.println("The window tests cannot run: " + reason.getMessage());
        } catch (ExecutionException inAStart) {
            System.err.println("The window tests cannot run: " + inAStart.getCause());
        }
    }

    private boolean allPassed() throws IOException, InterruptedException, ExecutionException {
        emptyWorkFolder();
        if (LINUX) {
            requireProgram("Xvfb");
            requireProgram("openbox");
            requireGtk();
        }
        if (!only.equals(ALL)) {
            return runTests(work, only);
        }
        // Each start has a display, a store and folders of its own, so two can run beside each other.
        int lanes = Math.min(MOST_LANES, Runtime.getRuntime().availableProcessors());
        ExecutorService pool = Executors.newFixedThreadPool(lanes);
        try {
            List<Future<Boolean>> starts = new ArrayList<>();
            for (String start : starts()) {
                Path folder = Files.createDirectories(work.resolve(start));
                starts.add(pool.submit(() -> runTests(folder, start)));
            }
            boolean passed = true;
            for (Future<Boolean> start : starts) {
                passed &= start.get();
            }
            return passed;
        } finally {
            pool.shutdownNow();
        }
    }

    private static List<String> starts() {
        List<String> starts = new ArrayList<>(SHARES);
        for (String start : OWN_STARTS) {
            if (start.equals(SERVER_START) && !Files.isDirectory(POSTGRES) && !"true".equals(System.getenv("CI"))) {
                System.err.println("Left out: the tests on a server need PostgreSQL in " + POSTGRES + ".");
            } else {
                starts.add(start);
            }
        }
        return starts;
    }

    /** A fresh folder each time: a workbench that finds its last window state restores it. */
    private void emptyWorkFolder() throws IOException {
        if (Files.exists(work)) {
            try (Stream<Path> inside = Files.walk(work)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        Files.createDirectories(work);
    }

    /** The product's own bundle list with the test bundles behind it; everything else is taken from the product. */
    private Path writeConfiguration(Path folder) throws IOException {
        Properties ini = new Properties();
        try (var in = Files.newInputStream(product.resolve("configuration/config.ini"))) {
            ini.load(in);
        }
        String bundles = ini.getProperty("osgi.bundles");
        String tests = jars(testBundles)
                .filter(jar -> !Files.exists(product.resolve("plugins").resolve(jar.getFileName())))
                .map(jar -> "reference:file:" + jar)
                .collect(Collectors.joining(","));
        if (tests.isEmpty()) {
            throw new CannotRun("no test bundles in " + testBundles);
        }
        Properties own = new Properties();
        own.setProperty("osgi.bundles", bundles + "," + tests);
        Path configuration = Files.createDirectories(folder.resolve("configuration"));
        try (var out = Files.newOutputStream(configuration.resolve("config.ini"))) {
            own.store(out, null);
        }
        return configuration;
    }

    private static Stream<Path> jars(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(path -> path.toString().endsWith(".jar")).sorted().toList().stream();
        }
    }

    private void requireProgram(String name) {
        boolean found = Stream.of(System.getenv().getOrDefault("PATH", "/usr/bin:/bin").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
        if (!found) {
            throw new CannotRun(name + " is not installed. On Debian or Ubuntu: apt-get install " + PACKAGES);
        }
    }

    private void requireGtk() throws IOException, InterruptedException {
        Path ldconfig = Stream.of("/sbin/ldconfig", "/usr/sbin/ldconfig").map(Path::of)
                .filter(Files::isExecutable).findFirst().orElse(null);
        if (ldconfig == null) {
            return; // No list of libraries on this system; the tests themselves will fail without GTK.
        }
        Process process = new ProcessBuilder(ldconfig.toString(), "-p").start();
        String listed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        if (!listed.contains("libgtk-3.so.0")) {
            throw new CannotRun("GTK 3 (libgtk-3.so.0) is not installed. On Debian or Ubuntu: apt-get install "
                    + PACKAGES);
        }
    }

    /** Starts a display with a window manager and says how a program gets there. */
    private Map<String, String> display(Path folder) throws IOException, InterruptedException {
        Map<String, String> environment = new TreeMap<>();
        environment.put("DISPLAY", startDisplay(folder));
        environment.put("GDK_BACKEND", "x11");
        environment.put("NO_AT_BRIDGE", "1");
        environment.put("LC_ALL", "C.UTF-8");
        startWindowManager(folder, environment);
        return environment;
    }

    /** @return the display's name, such as {@code :1}; the server picks a free number itself */
    private String startDisplay(Path folder) throws IOException {
        Process server = start(new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1600x1000x24",
                "-nolisten", "tcp", "-noreset").redirectError(folder.resolve("display.log").toFile()));
        var answer = new BufferedReader(new InputStreamReader(server.getInputStream(),
                StandardCharsets.US_ASCII));
        String number = answer.readLine();
        if (number == null) {
            throw new CannotRun("Xvfb did not start:\n" + Files.readString(folder.resolve("display.log")));
        }
        return ":" + number.strip();
    }

    /** Without a window manager nothing gets the keyboard focus as it does on a user's screen. */
    private void startWindowManager(Path folder, Map<String, String> environment) throws IOException, InterruptedException {
        Path ready = folder.resolve("window-manager.ready");
        Path log = folder.resolve("window-manager.log");
        var builder = new ProcessBuilder("openbox", "--sm-disable", "--startup", "touch '" + ready + "'")
                .redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().putAll(environment);
        Process manager = start(builder);
        for (int tenths = 0; !Files.exists(ready); tenths++) {
            if (!manager.isAlive() || tenths == 300) {
                throw new CannotRun("openbox did not start:\n" + Files.readString(log));
            }
            Thread.sleep(100);
        }
    }

    /** One start of the product with tests in it; everything it writes stays in the folder given. */
    private boolean runTests(Path folder, String which) throws IOException, InterruptedException {
        Map<String, String> environment = LINUX ? display(folder) : Map.of();
        Path configuration = writeConfiguration(folder);
        Path reports = Files.createDirectories(folder.resolve("reports"));
        Path launcher = jars(product.resolve("plugins"))
                .filter(jar -> jar.getFileName().toString().startsWith("org.eclipse.equinox.launcher-"))
                .findFirst().orElseThrow(() -> new CannotRun("no product in " + product));
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        if (MAC) {
            command.add("-XstartOnFirstThread");
        }
        command.addAll(List.of("-Xmx1g", "-Dfile.encoding=UTF-8",
                "-Dorg.eclipse.swt.internal.SessionManagerDBus.disable=true",
                "-Dcopperbook.tests.reports=" + reports, "-Dcopperbook.tests.only=" + which,
                "-Dcopperbook.home=" + folder.resolve("home"),
                "-jar", launcher.toString(), "-application", APPLICATION, "-consoleLog",
                "-configuration", configuration.toString(), "-data", folder.resolve("workspace").toString()));
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().putAll(environment);
        Process tests = start(builder);
        Thread said = passOn(tests);
        if (!tests.waitFor(minutes, TimeUnit.MINUTES)) {
            System.err.println("The window tests have not ended within " + minutes + " minutes. Where they stand:");
            start(new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                    Long.toString(tests.pid()), "Thread.print").inheritIO()).waitFor(30, TimeUnit.SECONDS);
            return false;
        }
        said.join();
        try (Stream<Path> written = Files.list(reports)) {
            if (written.noneMatch(file -> file.toString().endsWith(".xml"))) {
                System.err.println("The application ended with code " + tests.exitValue() + " before all tests ran.");
                return false;
            }
        }
        return tests.exitValue() == 0;
    }

    /** Prints what a program says line by line, so that two that speak at once do not break each other's lines. */
    private static Thread passOn(Process speaking) {
        Thread reader = new Thread(() -> {
            try (BufferedReader lines = new BufferedReader(new InputStreamReader(speaking.getInputStream(),
                    StandardCharsets.UTF_8))) {
                lines.lines().forEach(System.out::println);
            } catch (IOException | UncheckedIOException ended) {
                System.err.println("What the window tests say could not be read on: " + ended.getMessage());
            }
        }, "what the tests say");
        reader.setDaemon(true);
        reader.start();
        return reader;
    }

    private Process start(ProcessBuilder builder) throws IOException {
        Process process = builder.start();
        synchronized (started) {
            started.add(process);
        }
        return process;
    }

    /** Ends what this run started, the last first, and nothing else. */
    private void stopAll() {
        List<Process> running;
        synchronized (started) {
            running = new ArrayList<>(started);
        }
        Collections.reverse(running);
        for (Process process : running) {
            process.destroy();
            try {
                if (!process.waitFor(5, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                }
            } catch (InterruptedException interrupted) {
                process.destroyForcibly();
            }
        }
    }

    /** Why no test could be run; the message is for the person who started the build. */
    private static final class CannotRun extends RuntimeException {
        private static final long serialVersionUID = 1L;

        CannotRun(String message) {
            super(message);
        }
    }
}

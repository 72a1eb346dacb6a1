import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
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
        WindowTestRun run = new WindowTestRun(arguments);
        Runtime.getRuntime().addShutdownHook(new Thread(run::stopAll));
        try {
            if (run.allPassed()) {
                Files.createFile(run.work.resolve("passed"));
            }
        } catch (CannotRun reason) {
            System.err.println("The window tests cannot run: " + reason.getMessage());
        }
    }

    private boolean allPassed() throws IOException, InterruptedException {
        emptyWorkFolder();
        Map<String, String> environment = new TreeMap<>();
        if (LINUX) {
            requireProgram("Xvfb");
            requireProgram("openbox");
            requireGtk();
            String display = startDisplay();
            environment.put("DISPLAY", display);
            environment.put("GDK_BACKEND", "x11");
            environment.put("NO_AT_BRIDGE", "1");
            environment.put("LC_ALL", "C.UTF-8");
            startWindowManager(environment);
        }
        if (!only.equals(ALL)) {
            return runTests(work, only, environment);
        }
        boolean passed = runTests(work, ALL, environment);
        for (String start : OWN_STARTS) {
            if (start.equals(SERVER_START) && !Files.isDirectory(POSTGRES) && !"true".equals(System.getenv("CI"))) {
                System.err.println("Left out: the tests on a server need PostgreSQL in " + POSTGRES + ".");
                continue;
            }
            passed &= runTests(Files.createDirectories(work.resolve(start)), start, environment);
        }
        return passed;
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

    /** @return the display's name, such as {@code :1}; the server picks a free number itself */
    private String startDisplay() throws IOException {
        Process server = start(new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1600x1000x24",
                "-nolisten", "tcp", "-noreset").redirectError(work.resolve("display.log").toFile()));
        var answer = new BufferedReader(new InputStreamReader(server.getInputStream(),
                StandardCharsets.US_ASCII));
        String number = answer.readLine();
        if (number == null) {
            throw new CannotRun("Xvfb did not start:\n" + Files.readString(work.resolve("display.log")));
        }
        return ":" + number.strip();
    }

    /** Without a window manager nothing gets the keyboard focus as it does on a user's screen. */
    private void startWindowManager(Map<String, String> environment) throws IOException, InterruptedException {
        Path ready = work.resolve("window-manager.ready");
        Path log = work.resolve("window-manager.log");
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
    private boolean runTests(Path folder, String which, Map<String, String> environment)
            throws IOException, InterruptedException {
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
        var builder = new ProcessBuilder(command).inheritIO();
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().putAll(environment);
        Process tests = start(builder);
        if (!tests.waitFor(minutes, TimeUnit.MINUTES)) {
            System.err.println("The window tests have not ended within " + minutes + " minutes. Where they stand:");
            start(new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                    Long.toString(tests.pid()), "Thread.print").inheritIO()).waitFor(30, TimeUnit.SECONDS);
            return false;
        }
        try (Stream<Path> written = Files.list(reports)) {
            if (written.noneMatch(file -> file.toString().endsWith(".xml"))) {
                System.err.println("The application ended with code " + tests.exitValue() + " before all tests ran.");
                return false;
            }
        }
        return tests.exitValue() == 0;
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

package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.copperbook.desk.tests.run.TypingApplication;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The product, started as a process of its own, is killed without warning while somebody types; the next start opens
 * the job or the register by itself and offers everything back but at most the last second of typing. How often is in the environment
 * variable {@code COPPERBOOK_KILLS}; once or a few times in the daily build.
 */
class KilledWhileTypingTest {

    private static final String TIMES = "COPPERBOOK_KILLS";
    private static final int DAILY = 2;
    private static final long MAY_BE_LOST_MILLIS = 1000;
    private static final int LEAST_WORDS = 40;
    private static final long START_SECONDS = 180;

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "typing into a {0}")
    @ValueSource(strings = {"job", "register"})
    void atMostTheLastSecondOfTypingIsGone(String into) throws Exception {
        String suffix = "job".equals(into) ? "" : "-" + into;
        int times = Integer.parseInt(System.getenv().getOrDefault(TIMES, Integer.toString(DAILY)));
        Random random = new Random(42_026);
        List<Long> lost = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            lost.add(killed(Files.createDirectories(folder.resolve("home-" + into + i)), suffix, 300 + random.nextInt(2500)));
        }
        System.out.println("killed while typing into a " + into + ", milliseconds of typing lost each time: " + lost);
        assertTrue(lost.stream().allMatch(l -> l <= MAY_BE_LOST_MILLIS), "lost, milliseconds: " + lost);
    }

    /** Types for some time, kills, starts again; how old the oldest word was that did not come back. */
    private long killed(Path home, String suffix, long typingMillis) throws Exception {
        TreeMap<Integer, Long> typed = new TreeMap<>();
        Process typist = start(home, "type" + suffix);
        Thread reader = new Thread(() -> follow(typist, typed));
        reader.start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(START_SECONDS);
        while (count(typed) < LEAST_WORDS && System.nanoTime() < end && typist.isAlive()) {
            Thread.sleep(20);
        }
        assertTrue(count(typed) >= LEAST_WORDS, "the product starts and is typed into");
        Thread.sleep(typingMillis);
        long killedAt = System.currentTimeMillis();
        typist.destroyForcibly();
        assertTrue(typist.waitFor(60, TimeUnit.SECONDS), "it is dead");
        reader.join();
        String back = back(home, suffix);
        List<String> words = Stream.of(back.strip().split(" ")).toList();
        int last = words.size() - 1;
        for (int i = 0; i <= last; i++) {
            assertEquals("w" + i, words.get(i), "nothing is missing in the middle");
        }
        Long firstLost = typed.get(last + 1);
        return firstLost == null ? 0 : Math.max(0, killedAt - firstLost);
    }

    private String back(Path home, String suffix) throws IOException, InterruptedException {
        Process again = start(home, "read" + suffix);
        String back = null;
        try (BufferedReader out = again.inputReader(StandardCharsets.UTF_8)) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.startsWith(TypingApplication.BACK)) {
                    back = line.substring(TypingApplication.BACK.length());
                }
            }
        }
        assertTrue(again.waitFor(START_SECONDS, TimeUnit.SECONDS), "the second start ends");
        assertTrue(back != null, "the second start gives the text back");
        return back;
    }

    private static void follow(Process typist, TreeMap<Integer, Long> typed) {
        try (BufferedReader out = typist.inputReader(StandardCharsets.UTF_8)) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.startsWith(TypingApplication.TYPED)) {
                    String[] pieces = line.split(" ");
                    synchronized (typed) {
                        typed.put(Integer.parseInt(pieces[1]), Long.parseLong(pieces[2]));
                    }
                }
            }
        } catch (IOException killed) {
            // The stream ends with the process.
        }
    }

    private static int count(TreeMap<Integer, Long> typed) {
        synchronized (typed) {
            return typed.size();
        }
    }

    /** The same product and test bundles as of this run, with folders of their own. */
    private static Process start(Path home, String mode) throws IOException {
        Path configuration = Files.createDirectories(home.resolve("configuration-" + mode));
        Path own = place("osgi.configuration.area").resolve("config.ini");
        Files.copy(own, configuration.resolve("config.ini"));
        Path plugins = place("osgi.install.area").resolve("plugins");
        Path launcher;
        try (Stream<Path> jars = Files.list(plugins)) {
            launcher = jars.filter(j -> j.getFileName().toString().startsWith("org.eclipse.equinox.launcher-"))
                    .findFirst().orElseThrow();
        }
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        if (System.getProperty("os.name").startsWith("Mac")) {
            command.add("-XstartOnFirstThread");
        }
        command.addAll(List.of("-Xmx400m", "-Dfile.encoding=UTF-8",
                "-Dorg.eclipse.swt.internal.SessionManagerDBus.disable=true", "-Dcopperbook.home=" + home,
                "-D" + TypingApplication.MODE + "=" + mode, "-jar", launcher.toString(), "-application",
                "org.copperbook.desk.tests.type", "-consoleLog", "-configuration", configuration.toString(), "-data",
                home.resolve("workspace").toString()));
        return new ProcessBuilder(command)
                .redirectError(new File(home.toFile(), mode + ".log")).start();
    }

    private static Path place(String property) {
        return Path.of(URI.create(System.getProperty(property).replace(" ", "%20")));
    }
}

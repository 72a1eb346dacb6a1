package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The scripts at the root of the Linux product folder, started as a user would, in a home folder of their own. */
class LaunchScriptsTest {

    private static final int NO_DISPLAY = 69;

    @TempDir
    Path home;

    private Path product;

    @BeforeEach
    void findProductFolder() throws URISyntaxException {
        product = Path.of(Platform.getInstallLocation().getURL().getPath());
    }

    @Test
    void withoutDisplayTheWindowScriptSaysSoAndWorksTheDemoJobs() throws Exception {
        Path workbooks = home.resolve("work books");
        Outcome outcome = start(Map.of("DISPLAY", ""), "copperbook", "-demo", demoData(), "-workbooks",
                workbooks.toString());
        assertAll(
                () -> assertEquals(0, outcome.code, outcome::toString),
                () -> assertTrue(outcome.errors.contains("neither DISPLAY nor WAYLAND_DISPLAY is set"), outcome.errors),
                () -> assertTrue(outcome.errors.contains("apt-get install xvfb"), outcome.errors),
                () -> assertTrue(outcome.output.contains(workbooks.toString()), outcome.output),
                () -> assertTrue(workbooksIn(workbooks) > 0, outcome::toString));
    }

    @Test
    void aDisplayThatDoesNotAnswerEndsInTheDemoJobsToo() throws Exception {
        Path workbooks = home.resolve("workbooks");
        Outcome outcome = start(Map.of("DISPLAY", ":4711"), "copperbook", "--demo", demoData(), "--workbooks",
                workbooks.toString());
        assertAll(
                () -> assertEquals(0, outcome.code, outcome::toString),
                () -> assertTrue(outcome.errors.contains(":4711 does not answer"), outcome.errors),
                () -> assertTrue(workbooksIn(workbooks) > 0, outcome::toString));
    }

    @Test
    void withoutDisplayAndWithoutDemoNothingIsWritten() throws Exception {
        Outcome outcome = start(Map.of("DISPLAY", ""), "copperbook");
        assertAll(
                () -> assertEquals(NO_DISPLAY, outcome.code, outcome::toString),
                () -> assertTrue(outcome.errors.contains("copperbook-batch"), outcome.errors),
                () -> assertEquals(List.of(), filesBelow(home)));
    }

    @Test
    void anOptionThatThereIsNotOpensNoWorkshopOfItsOwn() throws Exception {
        Outcome outcome = start(Map.of("DISPLAY", ""), "copperbook", "--dmeo", demoData());
        assertAll(
                () -> assertEquals(2, outcome.code, outcome::toString),
                () -> assertTrue(outcome.errors.contains("no option --dmeo"), outcome.errors),
                () -> assertEquals(List.of(), filesBelow(home)));
    }

    @Test
    void theHeadlessScriptKeepsTheExitCodeOfBadUse() throws Exception {
        Outcome outcome = start(Map.of("DISPLAY", ""), "copperbook-batch", "no-such-command");
        assertAll(
                () -> assertEquals(2, outcome.code, outcome::toString),
                () -> assertTrue(outcome.errors.contains("no-such-command"), outcome::toString));
    }

    @Test
    void nothingIsWrittenIntoTheProductFolder() throws Exception {
        List<Path> before = filesBelow(product);
        start(Map.of("DISPLAY", ""), "copperbook-batch", "list");
        assertEquals(before, filesBelow(product));
    }

    private String demoData() {
        return product.resolve("demo-data").toString();
    }

    private Outcome start(Map<String, String> environment, String script, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(product.resolve(script).toString()));
        command.addAll(Arrays.asList(arguments));
        Path output = Files.createTempFile("script", ".out");
        Path errors = Files.createTempFile("script", ".err");
        try {
            var builder = new ProcessBuilder(command).directory(home.toFile())
                    .redirectOutput(output.toFile()).redirectError(errors.toFile());
            builder.environment().remove("WAYLAND_DISPLAY");
            builder.environment().remove("COPPERBOOK_HOME");
            builder.environment().put("HOME", home.toString());
            builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
            builder.environment().putAll(environment);
            int code = builder.start().waitFor();
            return new Outcome(code, Files.readString(output), Files.readString(errors));
        } finally {
            Files.delete(output);
            Files.delete(errors);
        }
    }

    private static long workbooksIn(Path folder) throws IOException {
        return filesBelow(folder).stream().filter(file -> file.toString().endsWith(".xlsx")).count();
    }

    private static List<Path> filesBelow(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            return inside.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private record Outcome(int code, String output, String errors) {
    }
}

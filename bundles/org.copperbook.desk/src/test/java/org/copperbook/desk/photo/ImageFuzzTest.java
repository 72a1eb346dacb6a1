package org.copperbook.desk.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged and crafted pictures: shown, or not shown, or refused, and never the end of the program. The decoders are the
 * toolkit's; where it is missing this fails, as the window's tests do.
 */
class ImageFuzzTest {

    private static final int IMAGES = Integer.getInteger("copperbook.fuzz", 1_000);
    private static final int MINUTES = 20;

    @TempDir
    Path folder;

    @Test
    void noPictureBringsTheProgramDownOrTakesMoreMemoryThanItHas() throws IOException, InterruptedException {
        Path errors = folder.resolve("errors");
        Process p = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m",
                "-Djava.io.tmpdir=" + folder, "-cp", System.getProperty("java.class.path"), HostileImages.class.getName(),
                Integer.toString(IMAGES), "20261126").redirectError(errors.toFile()).start();
        String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertTrue(p.waitFor(MINUTES, TimeUnit.MINUTES));
        assertEquals(0, p.exitValue(), "needs GTK 3, the package libgtk-3-0:\n" + Files.readString(errors));
        List<Integer> counts = Stream.of(said.split(" ")).map(Integer::valueOf).toList();
        System.out.printf("images: %d refused, %d not shown, %d shown, slowest %d ms%n", counts.get(0), counts.get(1),
                counts.get(2), counts.get(3));
        assertEquals(IMAGES + 24, counts.get(1) + counts.get(2));
        assertTrue(counts.get(0) > 0 && counts.get(1) > 0 && counts.get(2) > 4, said);
    }
}

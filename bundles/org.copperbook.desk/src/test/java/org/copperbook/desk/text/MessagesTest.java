package org.copperbook.desk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.PartState;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.junit.jupiter.api.Test;

/** Every text that the code names is there, and every text there can be formatted. */
class MessagesTest {

    private static final Pattern NAMED =
            Pattern.compile("(?:DeskWords\\.text|DeskWords\\.get\\(\\)\\.text)\\(\\s*\"([A-Za-z.]+)\"\\s*[,)]");
    private static final Pattern UNIT_NAMED = Pattern.compile("%([A-Za-z.]+)");

    @Test
    void everyTextNamedInTheCodeExists() throws IOException {
        List<String> missing = new ArrayList<>();
        int named = 0;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                Matcher m = NAMED.matcher(Files.readString(f));
                while (m.find()) {
                    named++;
                    if (!DeskWords.get().has(m.group(1))) {
                        missing.add(f.getFileName() + ": " + m.group(1));
                    }
                }
            }
        }
        assertTrue(named > 50, "the pattern finds the calls");
        assertEquals(List.of(), missing);
    }

    @Test
    void everyConstantShownHasAWord() {
        Stream.of(Outcome.values(), PartState.values(), HoldPoint.values(), HoldPointState.State.values(),
                Look.Size.values(), Workshop.Units.values()).flatMap(Stream::of)
                .forEach(c -> assertTrue(DeskWords.get().has(Words.key((Enum<?>) c)), c.toString()));
    }

    @Test
    void everyTextFormatsAndHasNoStrayBlanks() throws IOException {
        Properties texts = load("/org/copperbook/desk/messages.properties");
        for (String key : texts.stringPropertyNames()) {
            String text = texts.getProperty(key);
            assertEquals(text.strip(), text, key);
            if (text.contains("{0")) {
                String said = MessageFormat.format(text, 1, 2, 3, 4);
                assertTrue(!said.contains("{"), key + ": " + said);
            }
        }
    }

    @Test
    void everyNameInThePluginFileIsTranslated() throws IOException {
        Properties texts = load("/plugin.properties");
        String plugin;
        try (InputStream in = Desk.class.getResourceAsStream("/plugin.xml")) {
            plugin = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
        Matcher m = UNIT_NAMED.matcher(plugin);
        List<String> missing = new ArrayList<>();
        while (m.find()) {
            if (!texts.containsKey(m.group(1))) {
                missing.add(m.group(1));
            }
        }
        assertEquals(List.of(), missing);
    }

    private static Properties load(String resource) throws IOException {
        Properties p = new Properties();
        try (InputStream in = Desk.class.getResourceAsStream(resource)) {
            p.load(in);
        }
        return p;
    }
}

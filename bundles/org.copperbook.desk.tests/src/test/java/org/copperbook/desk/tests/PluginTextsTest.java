package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every text that a plug-in's pages name is in its message file, and every choice it offers has a word. */
class PluginTextsTest {

    private static final Pattern KEY = Pattern.compile("\"([a-z][A-Za-z]*(?:\\.[A-Za-z0-9]+)+)\"");
    /** Names of controls for tests and screen readers, no texts. */
    private static final String CONTROL_IDS = "open.";
    private static final Set<String> CONTROLS = Set.of("figures.sentence", "figures.rows", "figures.detail", "left.rows", "chart.left",
            "count.tap", "count.tapStrands", "fault.nextStep", "fault.why", "quote.answered", "stock.history",
            "hours.elsewhere", "hours.running");
    private static final Pattern OFFERED =
            Pattern.compile("\\.(?:choice|checks)\\([^;]*?([A-Z]\\w*(?:\\.[A-Z]\\w*)*)\\.class\\)");
    private static final Pattern IMPORT = Pattern.compile("import ([\\w.]+)\\.([A-Z]\\w*);");
    private static final Pattern TRANSLATED = Pattern.compile("%([A-Za-z.]+)");

    @ParameterizedTest
    @ValueSource(strings = {"inspection", "winding", "rectifier", "office", "runup"})
    void everyTextNamedInTheSourcesExists(String plugin) throws IOException {
        Properties texts = texts(plugin);
        TreeSet<String> missing = new TreeSet<>();
        int named = 0;
        for (Path source : sources(plugin)) {
            for (String line : Files.readAllLines(source)) {
                Matcher m = KEY.matcher(line);
                while (!line.contains("setData(Desk.ID") && m.find() && !m.group(1).startsWith(CONTROL_IDS)) {
                    named++;
                    if (!texts.containsKey(m.group(1)) && !CONTROLS.contains(m.group(1))) {
                        missing.add(source.getFileName() + ": " + m.group(1));
                    }
                }
            }
        }
        assertTrue(named > 20, "the pattern finds the keys of " + plugin);
        assertEquals(List.of(), List.copyOf(missing));
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspection", "winding", "rectifier", "office", "runup"})
    void everyChoiceOfferedHasAWord(String plugin) throws Exception {
        Properties texts = texts(plugin);
        List<String> missing = new ArrayList<>();
        int offered = 0;
        for (Path source : sources(plugin)) {
            String code = Files.readString(source);
            Matcher m = OFFERED.matcher(code);
            while (m.find()) {
                offered++;
                for (Object constant : enumOf(code, m.group(1)).getEnumConstants()) {
                    String key = ((Enum<?>) constant).getDeclaringClass().getSimpleName() + "."
                            + ((Enum<?>) constant).name();
                    if (!texts.containsKey(key)) {
                        missing.add(key);
                    }
                }
            }
        }
        assertTrue(offered > 0, "the pattern finds the choices of " + plugin);
        assertEquals(List.of(), missing);
    }

    @Test
    void everyConstantWordedWithoutAChoiceHasItsWord() throws IOException {
        Properties runup = texts("runup");
        Stream.of(HoldPoint.values(), HoldPointState.State.values(), Role.values()).flatMap(Stream::of)
                .map(c -> (Enum<?>) c).map(c -> c.getDeclaringClass().getSimpleName() + "." + c.name())
                .forEach(key -> assertTrue(runup.containsKey(key), key));
        Properties office = texts("office");
        for (Standing.How how : Standing.How.values()) {
            assertTrue(office.containsKey("How." + how.name()), how.name());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspection", "winding", "rectifier", "office", "runup"})
    void everyTextFormatsAndHasNoStrayBlanks(String plugin) throws IOException {
        Properties texts = texts(plugin);
        for (String key : texts.stringPropertyNames()) {
            String text = texts.getProperty(key);
            assertEquals(text.strip(), text, key);
            assertFalse(text.isEmpty(), key);
            if (text.contains("{0")) {
                assertFalse(MessageFormat.format(text, 1, 2, 3, 4, 5, 6, 7, 8).contains("{"), key);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspection", "winding", "rectifier", "office", "runup"})
    void everyNameInThePluginFileIsTranslated(String plugin) throws IOException {
        Path resources = Path.of("../org.copperbook." + plugin, "src/main/resources");
        Properties names = load(resources.resolve("plugin.properties"));
        Matcher m = TRANSLATED.matcher(Files.readString(resources.resolve("plugin.xml")));
        int named = 0;
        while (m.find()) {
            named++;
            assertTrue(names.containsKey(m.group(1)), m.group(1));
        }
        assertTrue(named > 0);
    }

    private static Class<?> enumOf(String code, String name) throws ClassNotFoundException {
        String outer = name.contains(".") ? name.substring(0, name.indexOf('.')) : name;
        Matcher m = IMPORT.matcher(code);
        while (m.find()) {
            if (m.group(2).equals(outer)) {
                return Class.forName(m.group(1) + "." + name.replace('.', '$'));
            }
        }
        throw new ClassNotFoundException(name + " is not imported");
    }

    /** What programs, pages and workbooks count; where one of it is counted, it is said so. */
    private static final Pattern ONE_OF_MANY = Pattern.compile("(?<!than |of )\\b1 (rows|lines|jobs|days|items|hours|customers|people|"
            + "new cards|cards|groups|coils|points|temperatures|problems|(more )?places|sizes|photos|turns|workbooks|revisions|files|"
            + "pole pairs|counts|poles|positions|diodes|readings|instruments|parts|steady stretches)\\b|(?<!first |most |group )\\b1 (were|are)\\b");

    /** A bridge has three diodes or more and poles come in pairs; ampere-turns are a unit of their own. */
    private static final Set<String> CANNOT_BE_ONE = Set.of("figure.how.flux", "plate.contradicts.ODD_POLES", "positions.right",
            "positions.limit", "poles.alternate", "capture.counts-agree", "core.currentText", "design.open", "row.odd-poles",
            "title.poles");

    @Test
    void aCountOfOneIsSaidInTheSingular() throws IOException {
        List<String> wrong = new ArrayList<>();
        int counted = 0;
        for (Path file : messages()) {
            Properties texts = load(file);
            for (String key : texts.stringPropertyNames()) {
                String text = texts.getProperty(key);
                if (text.contains("{0") && !CANNOT_BE_ONE.contains(key)) {
                    counted += text.contains(",choice,") ? 1 : 0;
                    String said = new MessageFormat(text, Locale.ENGLISH).format(new Object[] {1, 1, 1, 1, 1, 1, 1});
                    if (ONE_OF_MANY.matcher(said).find()) {
                        wrong.add(file.getFileName() + " " + key + ": " + said);
                    }
                }
            }
        }
        assertTrue(counted > 50, "texts that count are found: " + counted);
        assertEquals(List.of(), wrong);
    }

    /** Every file of texts of every bundle. */
    private static List<Path> messages() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(".."), 12)) {
            return files.filter(p -> p.toString().replace('\\', '/').contains("src/main/resources") && p.toString().endsWith(".properties")).toList();
        }
    }

    private static List<Path> sources(String plugin) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("../org.copperbook." + plugin, "src/main/java"))) {
            return files.filter(p -> p.toString().endsWith(".java")).toList();
        }
    }

    private static Properties texts(String plugin) throws IOException {
        return load(Path.of("../org.copperbook." + plugin, "src/main/resources/org/copperbook", plugin,
                "messages.properties"));
    }

    private static Properties load(Path file) throws IOException {
        Properties p = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            p.load(in);
        }
        return p;
    }
}

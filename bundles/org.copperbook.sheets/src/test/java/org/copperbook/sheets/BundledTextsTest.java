package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BundledTextsTest {

    private static Properties load(String name) throws Exception {
        Properties p = new Properties();
        try (Reader in = new InputStreamReader(BundledTextsTest.class.getResourceAsStream(name + ".properties"),
                StandardCharsets.UTF_8)) {
            p.load(in);
        }
        return p;
    }

    @ParameterizedTest
    @ValueSource(strings = {"quote", "quote_de"})
    void everyTextCanBeFilledAndHasNoStrayBlanks(String name) throws Exception {
        Properties texts = load(name);
        texts.forEach((key, value) -> {
            String text = (String) value;
            assertEquals(text.strip(), text, key + " has blanks at its ends");
            assertFalse(text.isEmpty(), key + " is empty");
            Object[] numbers = {1, 2, 3, 4};
            assertFalse(new MessageFormat(text, Locale.ENGLISH).format(numbers).contains("{"), key + " is not filled");
        });
    }

    @Test
    void bothLanguagesOfTheQuoteHaveTheSameTextsWithTheSameBlanks() throws Exception {
        Properties english = load("quote");
        Properties german = load("quote_de");
        assertEquals(english.stringPropertyNames(), german.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertEquals(blanks(english.getProperty(key)), blanks(german.getProperty(key)), key);
        }
    }

    private static String blanks(String text) {
        return Arrays.stream(text.replaceAll("[^{}0-9]", "").split("(?<=})")).sorted().toList().toString();
    }
}

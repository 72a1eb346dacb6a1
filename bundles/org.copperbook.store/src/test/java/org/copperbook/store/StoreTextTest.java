package org.copperbook.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Collections;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

class StoreTextTest {

    @Test
    void everyMessageFormatsWithoutStrayQuotesOrBlanks() {
        ResourceBundle all = ResourceBundle.getBundle("org.copperbook.store.messages");
        for (String key : Collections.list(all.getKeys())) {
            String text = StoreText.of(key, "a1", "b2", "c3", "d4", "e5");
            assertEquals(text.strip(), text, key);
            assertFalse(text.contains("''") || text.matches(".*'[a-z{].*[^a-z ]") && text.contains("{0}"), text);
            for (int i = 0; i < 5; i++) {
                if (all.getString(key).contains("{" + i + "}")) {
                    assertEquals(-1, text.indexOf("{" + i + "}"), text);
                }
            }
        }
    }

    @Test
    void numbersAndBracesAreWrittenPlain() {
        assertEquals("A revision is missing: link 1234567 of the chain is gone.",
                StoreText.of("audit.missing", 1_234_567));
        assertEquals(true, StoreText.of("badNumberSeries", "x").contains("{year}-{n:4}"));
    }
}

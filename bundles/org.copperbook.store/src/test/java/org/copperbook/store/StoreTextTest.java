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
            Object[] values = {"a1", "b2", "c3", "d4", "e5"};
            for (int i = 0; i < values.length; i++) {
                values[i] = all.getString(key).contains("{" + i + ",") ? (Object) (i + 1) : values[i];
            }
            String text = StoreText.of(key, values);
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
        assertEquals("1 item was moved", StoreText.of("stock.movedSince", 1).substring(0, 16));
        assertEquals("1234567 items were moved", StoreText.of("stock.movedSince", 1_234_567).substring(0, 24));
    }
}

package org.copperbook.store.jdbc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchTextTest {

    @ParameterizedTest
    @CsvSource({"müller, MULLER", "Straße, STRASSE", "Čapek, CAPEK", "i, I", "x²y, X2Y"})
    void caseAndAccentsDoNotCount(String text, String folded) {
        assertEquals(folded, SearchText.fold(text));
    }

    @Test
    void theTongueOfTheMachineDoesNotCount() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertEquals("IVIR", SearchText.fold("ivir"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void numbersSortByValue() {
        assertTrue(SearchText.natural("2026-9").compareTo(SearchText.natural("2026-10")) < 0);
        assertTrue(SearchText.natural("set 9").compareTo(SearchText.natural("Set 10")) < 0);
    }

    @Test
    void wildcardsAreOrdinaryText() {
        assertEquals("%100\\%\\_\\\\%", SearchText.anywhere("100%_\\"));
    }

    @Test
    void aFilterHasFiniteWords() {
        assertEquals(List.of("A", "B"), SearchText.words(" a\u00a0b a "));
        assertTrue(SearchText.words("w ".repeat(5_000) + String.join(" ", java.util.Collections.nCopies(500, "x")))
                .size() <= 50);
    }
}

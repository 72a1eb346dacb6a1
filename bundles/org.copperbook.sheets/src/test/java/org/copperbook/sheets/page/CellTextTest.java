package org.copperbook.sheets.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"=cmd|' /C calc'!A0", "@SUM(1)", "+1+cmd|' /C calc'!A0", "-2+3+cmd|' /C calc'!A0", "\t=1", "\r=1",
        "'=1", "''=1", "- loose"})
    void whatASpreadsheetTakesForAFormulaIsMarkedAndComesBack(String text) {
        assertEquals("'" + text, CellText.neutral(text));
        assertEquals(text, CellText.plain(CellText.neutral(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-5", "+3,2", "-40 °C", "shaft", "'", "it's", "'quoted'", "東方電機", "مصنع", "1-9"})
    void everythingElseStaysAsItIs(String text) {
        assertEquals(text, CellText.neutral(text));
        assertEquals(text, CellText.plain(text));
    }

    @Test
    void whatASpreadsheetItselfMarkedLosesItsMark() {
        assertEquals("=1", CellText.plain("'=1"));
    }

    @Test
    void theFirstLetterWithADirectionSaysFromWhereATextIsRead() {
        assertTrue(CellText.isFromTheRight("12 \u05de\u05e4\u05e2\u05dc, 400 V"));
        assertTrue(CellText.isFromTheRight("\u0634\u0631\u0643\u0629 (works)."));
        assertFalse(CellText.isFromTheRight("works \u0634\u0631\u0643\u0629"));
        assertFalse(CellText.isFromTheRight("400"));
        assertFalse(CellText.isFromTheRight(""));
    }
}

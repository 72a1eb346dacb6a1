package org.copperbook.desk.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.calc.quantity.DecimalMark;
import org.junit.jupiter.api.Test;

class WorksheetTest {

    private final Catalogue catalogue = Catalogue.standard();

    private Worksheet sheet(String name) {
        return new Worksheet(catalogue, catalogue.find(name).orElseThrow(), DecimalMark.DOT);
    }

    @Test
    void saysWhatIsStillMissingAndComputesNothingBefore() {
        Worksheet sheet = sheet("synchronous-speed");
        assertFalse(sheet.missing().isEmpty());
        assertTrue(sheet.answer().lines().isEmpty());
    }

    /** 50 Hz and 6 poles give 1000 r/min: Srivastava Ex. 6.1. */
    @Test
    void computesAPublishedExampleAndCopiesItWithItsSource() {
        Worksheet sheet = sheet("synchronous-speed");
        sheet.fill("f", "50 Hz");
        sheet.fill("poles", "6");
        Worksheet.Answer answer = sheet.answer();
        assertEquals("", answer.problem());
        assertTrue(answer.lines().get(0).value().startsWith("1000"), answer.toString());
        assertTrue(sheet.copied().contains(sheet.calculation().source()));
    }

    @Test
    void namesTheInputThatIsNotUnderstood() {
        Worksheet sheet = sheet("synchronous-speed");
        sheet.fill("f", "50 ohm");
        sheet.fill("poles", "6");
        assertEquals("f", sheet.answer().input());
        sheet.fill("f", "50");
        assertEquals("", sheet.answer().problem());
    }
}

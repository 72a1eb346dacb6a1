package org.copperbook.desk.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Outcome;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast by WCAG 2.1, success criterion 1.4.3: 4.5 to 1 for text. */
class PaletteTest {

    private static final double NEEDED = 4.5;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyColourReadsOnThePaperOfItsTheme(boolean dark) {
        RGB paper = Palette.paper(dark);
        for (Outcome o : Outcome.values()) {
            reads(o.name(), Palette.outcome(o, dark), paper);
        }
        reads("accent", Palette.accent(dark), paper);
        reads("muted", Palette.muted(dark), paper);
    }

    /** The widget background of the common light theme, on which labels and notes stand. */
    @Test
    void everyColourReadsOnTheGreyOfForms() {
        RGB grey = new RGB(246, 245, 244);
        for (Outcome o : Outcome.values()) {
            reads(o.name(), Palette.outcome(o, false), grey);
        }
    }

    /** WCAG 2.1: black on white is 21 to 1. */
    @Test
    void contrastIsComputedAsTheStandardDefinesIt() {
        assertEquals(21.0, Palette.contrast(new RGB(0, 0, 0), new RGB(255, 255, 255)), 1e-9);
        assertEquals(1.0, Palette.contrast(new RGB(9, 9, 9), new RGB(9, 9, 9)), 1e-9);
    }

    private static void reads(String what, RGB colour, RGB paper) {
        double c = Palette.contrast(colour, paper);
        assertTrue(c >= NEEDED, what + " has only " + c);
    }
}

package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.nameplate.Nameplate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The rating plate as it is typed: units, contradictions shown and kept, several ratings, excitation, odd texts. */
class NameplatePageTest {

    private static final PartKey PART = PartKey.of(PartKind.NAMEPLATE);

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private JobEditor editor;

    @BeforeEach
    void theJobIsOpen() throws Exception {
        desktop.beSomebody();
        editor = desktop.open("2026-0008");
        editor.show(PART);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private Nameplate plate() {
        return editor.document().part(PART, Nameplate.class).orElseThrow();
    }

    private void cell(RecordGrid grid, int row, String column, String words) {
        keys.cell(grid, row, grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(column), words);
    }

    /** 1 hp is 745.7 W; root 3 times 400 V times 100 A is 69.3 kVA. */
    @Test
    void unitsAreUnderstoodAndAContradictionIsShownAndKept() {
        desktop.type("/powerW", "50 hp");
        assertEquals(50 * 745.7, plate().powerW(), 5);
        desktop.type("/powerW", "");
        desktop.type("/phases", "3");
        desktop.type("/voltageV", "400");
        desktop.type("/currentA", "100");
        desktop.type("/apparentPowerVA", "0,06 MVA");
        desktop.until("the contradiction is shown", () -> desktop.text("plate.crossCheck").contains("69.28 kVA"));
        assertEquals(60e3, plate().apparentPowerVA(), 1e-6, "and what was typed is kept");
        desktop.type("/apparentPowerVA", "69.3");
        desktop.until("and goes when the figures agree", () -> desktop.text("plate.crossCheck").contains("do not contradict"));
    }

    @Test
    void aConvertedPowerIsSeenWithItsWholeUnit() {
        desktop.type("/powerW", "75 hp");
        assertEquals("55.92749 kW", desktop.text("/powerW"));
        desktop.type("/apparentPowerVA", "-123.4567 MVA");
        for (String field : List.of("/powerW", "/apparentPowerVA")) {
            Control line = desktop.field(field);
            desktop.until("all of " + desktop.text(field) + " is seen",
                    () -> line.getSize().x >= line.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        }
    }

    @Test
    void nonsenseIsKeptAsTypedAndExplainedBesideTheField() {
        desktop.type("/voltageV", "-400");
        desktop.type("/frequencyHz", "fifty");
        desktop.type("/year", "99999");
        desktop.type("/powerFactor", "1.7");
        assertEquals("fifty", desktop.text("/frequencyHz"));
        assertEquals("99999", desktop.text("/year"));
        assertEquals("fifty", editor.document().typed(PART, "/frequencyHz").orElseThrow());
        desktop.until("a power factor above one cannot be", () -> desktop.text("plate.crossCheck").contains("power factor of 1.7"));
    }

    @Test
    void whatCannotBeIsSaidAndHidesNothingElse() {
        desktop.type("/poles", "6");
        desktop.type("/frequencyHz", "50");
        desktop.type("/speedRpm", "750");
        desktop.type("/currentA", "-12");
        desktop.type("/excitationA", "0");
        desktop.type("/duty", "S11");
        desktop.type("/riseLimit", "80 K");
        desktop.type("/ambientCelsius", "40");
        desktop.type("/minAmbientCelsius", "-20");
        // 120 x 50 / 6 = 1000
        for (String said : List.of("A current of", "gives 1000 r/min", "An exciter field current of 0", "S11 names no duty")) {
            desktop.until(said, () -> desktop.text("plate.crossCheck").contains(said));
        }
        assertEquals(-12, plate().currentA(), "and what was typed is kept");
        assertEquals("80 K", plate().riseLimit());
        assertEquals(-20, plate().minAmbientCelsius());
    }

    /** A star of two parallel circuits has half the volts of the series star; delta of it the root of three less. */
    @Test
    void everyRatingOfAReconnectablePlateHasItsOwnLineAndCheck() {
        desktop.type("/phases", "3");
        desktop.type("/voltageV", "400");
        desktop.type("/connection", "series star");
        desktop.type("/frequencyHz", "50");
        desktop.type("/speedRpm", "1500");
        RecordGrid grid = desktop.grid("/otherRatings");
        String[][] lines = {{"200", "parallel star", "50", "1500"}, {"480", "series star", "60", "1800"},
            {"231", "series delta", "50", "1500"}, {"300", "parallel star", "50", "1500"}};
        for (int i = 0; i < lines.length; i++) {
            cell(grid, i, "/voltageV", lines[i][0]);
            cell(grid, i, "/connection", lines[i][1]);
            cell(grid, i, "/frequencyHz", lines[i][2]);
            cell(grid, i, "/speedRpm", lines[i][3]);
        }
        int check = grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf("plate.check");
        desktop.until("the last line contradicts", () -> grid.model().text(3, check).contains("200 V"));
        for (int i = 0; i < 3; i++) {
            assertEquals("agrees", grid.model().text(i, check), lines[i][1]);
        }
        assertEquals(300, plate().otherRatings().get(3).voltageV(), "and is kept");
    }

    /** 80 V over 2 A is 40 ohm; a field of 20 ohm at 20 degrees has 36 at 180 (copper, IEC 60034-1): it cannot be. */
    @Test
    void ratedFieldVoltsAndAmpsAreHeldAgainstTheFieldMeasured() {
        desktop.type("/excitationV", "80");
        desktop.type("/excitationA", "2");
        desktop.type("/thermalClass", "F");
        editor.show(PartKey.of(PartKind.INSPECTION));
        desktop.settle(editor);
        RecordGrid readings = desktop.grid("/readings", "/temperatureHow");
        cell(readings, 0, "/place/winding", "exciter stator");
        cell(readings, 0, "/place/mark", "F1-F2");
        cell(readings, 0, "/observed", "20");
        cell(readings, 0, "/windingCelsius", "20");
        cell(readings, 0, "/instrument", "BR-1");
        desktop.until("the plate is contradicted", () -> said().startsWith("Contradiction"));
        editor.show(PART);
        desktop.settle(editor);
        desktop.type("/excitationV", "50");
        desktop.until("25 ohm are plausible", () -> said().contains("as a field does"));
    }

    private String said() {
        return editor.judgement().verdicts().stream().filter(v -> v.id().equals("plate.field.exciter-stator"))
                .map(Verdict::reason).findFirst().orElse("");
    }

    @Test
    void aSerialNumberThatStandsOnAnotherJobIsSaidAndKept() throws Exception {
        String other = desktop.session().store().load(desktop.session().store().idOf("2026-0006").orElseThrow()).nameplate()
                .orElseThrow().serial();
        desktop.type("/serial", " " + other.toLowerCase() + " ");
        desktop.until("it is said", () -> desktop.shows("plate.sameSerial")
                && ((Label) desktop.field("plate.sameSerial")).getText().contains("2026-0006"));
        desktop.type("/serial", other + "X9");
        desktop.until("and goes with another number", () -> !desktop.shows("plate.sameSerial"));
        assertEquals(other + "X9", plate().serial());
    }

    @Test
    void namesOfAnyScriptFormulasAndLongTextsAreKeptAsTheyAre() {
        String[] texts = {"مصنع الأمل للمحركات", "東方電機製作所", "=cmd|' /C calc'!A0", "x".repeat(5000)};
        for (String text : texts) {
            desktop.type("/maker", text);
            assertEquals(text, plate().maker());
            assertEquals(text, desktop.text("/maker"));
        }
        assertTrue(editor.document().undo(PART).isPresent());
        desktop.work();
        assertEquals(texts[2], desktop.text("/maker"));
    }
}

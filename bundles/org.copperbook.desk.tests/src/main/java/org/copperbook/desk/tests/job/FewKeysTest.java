package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.Windings;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** How many keys a regular winding takes, typed into the real window from a freshly opened empty page. */
class FewKeysTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    private static final int ALLOWED = 40;

    private final Desktop desktop = new Desktop();
    private final CountedKeys keys = new CountedKeys(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    /**
     * Typed is everything that makes the coil list, the wire and the conditions of the readings complete: 48 slots,
     * 4 poles, span 1-11, 5 turns in each coil, twelve wires of 1.18 mm in hand, 2 circuits, star; winding temperature
     * 21.5, the instrument, four-wire. No nameplate helps: the poles are typed too. Then the first group's resistance.
     * Expected groups and slots: two layers, four slots per pole and phase, a group per pole and phase, belts in the
     * order U -W V -U W -V (Chapman, Electric Machinery Fundamentals, app. B).
     */
    @Test
    void aRegular48SlotWindingTakesFewerThanFortyKeysBesideItsDigits() throws Exception {
        desktop.beSomebody();
        JobEditor editor = emptyStatorPage();
        keys.type("48s 4p 1-11 x5 12 of 1.18 2c star");
        keys.press(SWT.CR);
        desktop.until("the coil list is laid out", () -> desktop.grid("/groups").model().filled() == 12);
        desktop.until("the cursor goes on to the conditions", () -> has("conditions.windingCelsius"));
        keys.type("21.5");
        keys.press(SWT.CR);
        desktop.until("Enter goes on to the instrument", () -> has("conditions.instrument"));
        keys.press(SWT.ARROW_DOWN);
        keys.press(SWT.CR);
        desktop.until("Enter goes on to the method", () -> has("conditions.method"));
        keys.press(SWT.ARROW_DOWN);
        keys.press(SWT.ARROW_DOWN);
        keys.press(SWT.CR);
        desktop.until("Enter goes on to the first group's resistance",
                () -> desktop.grid("/groups").table().isFocusControl());
        System.out.printf("48-slot winding: %d keys beside %d digits%n", keys.besideDigits(), keys.digits());
        int forWinding = keys.besideDigits();
        keys.type("0.0421");
        keys.press(SWT.CR);
        desktop.until("the reading stands in the record", () -> winding(editor).groups().get(0).resistance() != null);
        assertComplete(winding(editor));
        assertTrue(forWinding < ALLOWED, forWinding + " keys beside the digits");
    }

    @Test
    void whatTheLineDoesNotUnderstandIsSaidBesideItAndNothingIsFilled() throws Exception {
        desktop.beSomebody();
        JobEditor editor = emptyStatorPage();
        keys.type("48 slots 4 plates");
        keys.press(SWT.CR);
        assertNull(editor.document().part(STATOR).orElse(null), "nothing is filled");
        assertEquals("48 slots 4 plates", ((Text) desktop.field("winding.oneLine")).getText(), "what was typed is kept");
        assertTrue(has("winding.oneLine"), "the cursor stays");
        for (int i = 0; i < "lates".length(); i++) {
            keys.press(SWT.BS);
        }
        keys.press(SWT.CR);
        desktop.until("the fields are filled", () -> editor.document().part(STATOR).isPresent());
        assertEquals(48, winding(editor).slots());
        assertEquals(4, winding(editor).poles());
        assertEquals(List.of(), winding(editor).groups(), "span and turns are not known yet");
    }

    private void assertComplete(WindingData w) {
        assertEquals(12, w.groups().size());
        assertEquals(48, w.coilCount());
        for (CoilGroup g : w.groups()) {
            assertEquals(4, g.coils().size());
            for (CapturedCoil c : g.coils()) {
                assertEquals(5, c.turns());
                assertEquals(10, Math.floorMod(c.returnSlot() - c.goSlot(), 48), "span 1-11");
            }
        }
        assertEquals(List.of("U", "W", "V", "U", "W", "V"), w.groups().stream().limit(6).map(CoilGroup::phase).toList());
        assertEquals(List.of(1, 2, 3, 4), w.groups().get(0).coils().stream().map(CapturedCoil::goSlot).toList());
        assertEquals("1.18 mm", w.wire().get(0).size());
        assertEquals(12, w.wire().get(0).strands());
        assertEquals(2, w.circuits());
        assertEquals(WindingData.Connection.STAR, w.connection());
        Reading reading = w.groups().get(0).resistance();
        assertEquals(0.0421, reading.observed().value());
        assertEquals(21.5, reading.windingCelsius());
        assertEquals(Reading.Method.FOUR_WIRE, reading.method());
        assertEquals(desktop.session().shop().instruments().instruments().get(0).id(), reading.instrument());
    }

    private JobEditor emptyStatorPage() throws Exception {
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.document().beginWith(STATOR, new Windings().beginning(STATOR, editor.document().job(),
                desktop.session().json()));
        editor.begin(STATOR);
        desktop.settle(editor);
        desktop.until("the page opens with the cursor in its one line", () -> has("winding.oneLine"));
        return editor;
    }

    private static boolean has(String id) {
        return Display.getCurrent().getFocusControl() != null
                && id.equals(Display.getCurrent().getFocusControl().getData(Desk.ID));
    }

    private WindingData winding(JobEditor editor) {
        return (WindingData) editor.document().part(STATOR).orElseThrow();
    }
}

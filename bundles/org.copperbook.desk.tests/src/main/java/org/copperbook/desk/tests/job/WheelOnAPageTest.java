package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingRole;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The mouse wheel moves the page and never a value that the pointer passes over. */
class WheelOnAPageTest {

    private final Desktop desktop = new Desktop();

    @BeforeEach
    void aWindingIsOpen() throws Exception {
        JobEditor editor = desktop.open("2026-0001");
        editor.show(PartKey.windingAsFound(WindingRole.MAIN_STATOR));
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void overAChoiceThePageMovesAndTheInstrumentStays() {
        Combo instrument = (Combo) desktop.field("conditions.instrument");
        String chosen = instrument.getText();
        int before = page(instrument).getOrigin().y;
        assertFalse(turned(instrument, -3).doit, "the choice would take another instrument");
        assertTrue(page(instrument).getOrigin().y > before);
        assertEquals(chosen, instrument.getText());
        turned(instrument, 3);
        assertEquals(before, page(instrument).getOrigin().y);
    }

    @Test
    void overAListWithNothingOutOfSightThePageMoves() {
        Control groups = desktop.grid("/groups", "/coils").table();
        int before = page(groups).getOrigin().y;
        turned(groups, -3);
        assertTrue(page(groups).getOrigin().y > before);
    }

    @Test
    void elsewhereTheWheelIsLeftAlone() throws Exception {
        Control onTheLeft = desktop.register().getSite().getShell();
        assertTrue(turned(onTheLeft, -3).doit);
    }

    private static Event turned(Control over, int notches) {
        Event wheel = new Event();
        wheel.count = notches;
        wheel.doit = true;
        over.notifyListeners(SWT.MouseVerticalWheel, wheel);
        return wheel;
    }

    private static ScrolledComposite page(Control on) {
        Composite up = on.getParent();
        while (!(up instanceof ScrolledComposite)) {
            up = up.getParent();
        }
        return (ScrolledComposite) up;
    }
}

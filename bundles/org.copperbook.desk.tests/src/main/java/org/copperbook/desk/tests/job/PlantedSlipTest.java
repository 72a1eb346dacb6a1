package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A count that is one turn out in one coil is named in one sentence with its probability, as soon as it is typed. */
class PlantedSlipTest {

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void oneTurnTooManyInOneCoilIsNamedWithItsProbability() throws Exception {
        desktop.beSomebody();
        JobEditor editor = desktop.open("2026-0005");
        editor.show(WindingWorkshop.FOUND);
        desktop.settle(editor);
        desktop.until("the capture fits its readings", () -> sentence().contains("The readings agree with the capture"));
        assertTrue(figures().getItemCount() > 12, "figures are listed");
        desktop.until("ranges have their sources", () -> figures().getItem(2).getText(5).contains("Pyrhonen"));
        int coils = desktop.grid("/groups").model().columns().stream().map(c -> c.pointer()).toList().indexOf("/coils");
        Matcher turns = Pattern.compile("\u00d7(\\d+)").matcher(desktop.grid("/groups").model().text(3, coils));
        assertTrue(turns.find());
        String slipped = turns.replaceFirst("x" + (Integer.parseInt(turns.group(1)) + 1)).replace("\u00d7", "x");
        keys.fill("/groups", 3, coils, slipped);
        desktop.until("the sentence names the slip", () -> sentence().contains(
                "one coil of group 4 had one turn fewer than counted"));
        assertTrue(sentence().matches("(?s).*with a probability of \\d+ %.*"), sentence());
        keys.control('z');
        desktop.until("taken back, it fits again", () -> sentence().contains("The readings agree with the capture"));
    }

    private String sentence() {
        return desktop.text("figures.sentence");
    }

    private Table figures() {
        return (Table) desktop.field("figures.rows");
    }
}

package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.winding.WindingData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Wire from the shelf: proposals beside the data, the choice written into the new winding, never over the old one. */
class WireFromTheShelfTest {

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private final WindingWorkshop workshop = new WindingWorkshop(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aChosenWireBeginsTheNewWindingWithTheReasonAndUndoTakesItBack() throws Exception {
        JobEditor editor = workshop.beforeWinding();
        WindingData found = shown(editor);
        desktop.until("the shelf is searched", () -> rows().getItemCount() > 1);
        int other = firstOther();
        String label = rows().getItem(other).getText(0);
        desktop.press("stock.take");
        assertTrue(said().startsWith("Choose a proposal"), said());
        choose(other);
        desktop.press("stock.take");
        assertTrue(said().startsWith("Say the reason"), said());
        assertTrue(editor.document().part(WindingWorkshop.WOUND).isEmpty(), "nothing is written without a reason");
        keys.fill("stock.why", "1.18 mm sold out");
        desktop.until("the new winding is shown", () -> editor.shown().filter(WindingWorkshop.WOUND::equals).isPresent());
        WindingData wound = editor.document().part(WindingWorkshop.WOUND, WindingData.class).orElseThrow();
        assertEquals(label, wound.wire().stream().map(w -> w.strands() + " \u00d7 " + w.size())
                .reduce((a, b) -> a + " + " + b).orElseThrow());
        assertTrue(wound.asWound());
        assertTrue(wound.reason().contains("1.18 mm sold out") && wound.reason().contains("12 \u00d7 1.18 mm as found"),
                wound.reason());
        assertEquals(found.slots(), wound.slots(), "the rest is as found");
        assertEquals(found, editor.document().part(WindingWorkshop.FOUND).orElseThrow(), "the old winding is untouched");
        assertNotEquals(found.wire(), wound.wire());
        keys.control('z');
        desktop.until("one step takes all of it back", () -> editor.document().part(WindingWorkshop.WOUND).isEmpty());
        keys.control('y');
        desktop.until("and does it again", () -> editor.document().part(WindingWorkshop.WOUND).equals(
                java.util.Optional.of(wound)));
    }

    @Test
    void theWishNarrowsAndWidensTheProposals() throws Exception {
        workshop.beforeWinding();
        shownFound();
        desktop.until("the shelf is searched", () -> rows().getItemCount() > 1);
        ((Text) desktop.field("stock.mostSizes")).setText("1");
        desktop.until("one size each", () -> rows().getItemCount() > 0 && everyRow(0, t -> !t.contains(" + ")));
        ((Text) desktop.field("stock.mostStrands")).setText("many");
        desktop.work();
        assertEquals("many", desktop.text("stock.mostStrands"), "what was typed stays");
        ((Text) desktop.field("stock.mostStrands")).setText("40");
        desktop.until("proposals again", () -> rows().getItemCount() > 0);
        thatNothingFitsIsSaid();
    }

    /** One strand takes the place of twelve nowhere: the original alone is left, and not even that if none is held. */
    private void thatNothingFitsIsSaid() {
        ((Text) desktop.field("stock.mostStrands")).setText("1");
        desktop.until("nothing but the original", () -> rows().getItemCount() == 1 && said().startsWith("Only the original"));
        assertTrue(rows().getItem(0).getText(0).contains("as the original"), rows().getItem(0).getText(0));
        JobEditor editor = (JobEditor) desktop.activeEditor();
        editor.document().change(WindingWorkshop.FOUND, "/wire", t -> {
            ((ObjectNode) t.path("wire").path(0)).put("size", "2.5 mm");
            return t;
        });
        desktop.until("nothing at all", () -> rows().getItemCount() == 0 && said().startsWith("Nothing on the shelf fits"));
        desktop.press("stock.take");
        assertTrue(editor.document().part(WindingWorkshop.WOUND).isEmpty(), "nothing is written when nothing is offered");
    }

    private void shownFound() {
        ((JobEditor) desktop.activeEditor()).show(WindingWorkshop.FOUND);
        desktop.settle((JobEditor) desktop.activeEditor());
    }

    private WindingData shown(JobEditor editor) {
        shownFound();
        return editor.document().part(WindingWorkshop.FOUND, WindingData.class).orElseThrow();
    }

    private boolean everyRow(int column, java.util.function.Predicate<String> holds) {
        for (int i = 0; i < rows().getItemCount(); i++) {
            if (!holds.test(rows().getItem(i).getText(column))) {
                return false;
            }
        }
        return true;
    }

    private int firstOther() {
        for (int i = 0; i < rows().getItemCount(); i++) {
            if (!rows().getItem(i).getText(0).contains("as the original")) {
                return i;
            }
        }
        throw new AssertionError("only the original is proposed");
    }

    private void choose(int row) {
        rows().setSelection(row);
        rows().notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    private Table rows() {
        return (Table) desktop.field("stock.rows");
    }

    private String said() {
        return desktop.text("stock.said");
    }
}

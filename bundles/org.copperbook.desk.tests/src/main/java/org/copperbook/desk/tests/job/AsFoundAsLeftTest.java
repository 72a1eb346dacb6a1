package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.copperbook.desk.chart.ChartArea;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.sheets.picture.Mark;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of a new winding compares it with the old one, group by group on one temperature, as a table and a picture. */
class AsFoundAsLeftTest {

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private final WindingWorkshop workshop = new WindingWorkshop(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void everyGroupStandsInTheTableAndInThePictureAndFollowsTheTyping(@TempDir Path folder) throws Exception {
        JobEditor editor = workshop.wound();
        editor.show(WindingWorkshop.WOUND);
        desktop.settle(editor);
        desktop.until("the comparison is there", () -> shows("left.rows") && rows().getItemCount() == 15);
        assertTrue(rows().getColumn(1).getText().contains("20"), "the reference temperature stands over the column");
        int group5 = row("coil group 5");
        assertTrue(rows().getItem(group5).getText(1).contains("\u00b1"), "with its uncertainty");
        assertEquals("meets", rows().getItem(group5).getText(5));
        PictureCanvas picture = (PictureCanvas) desktop.field("chart.left");
        assertTrue(texts(picture).contains("As found") && texts(picture).contains("As left"), texts(picture));
        assertTrue(texts(picture).contains("Limit"), "the band is named: " + texts(picture));
        Path file = folder.resolve("change.svg");
        picture.output().askWhere(name -> Optional.of(file));
        picture.output().saveSvg();
        desktop.until("the picture is saved", () -> Files.exists(file) && file.toFile().length() > 1000
                && label("chart.left.reading").contains(file.getFileName().toString()));
        theCrosshairTellsTheValuesOfAGroup((ChartArea) picture.getParent(), folder.resolve("change.csv"));

        int resistance = desktop.grid("/groups").model().columns().stream().map(c -> c.pointer()).toList()
                .indexOf("/resistance");
        var before = picture.scene();
        keys.fill("/groups", 4, resistance, "31 m");
        desktop.until("a wrong group fails in the table", () -> rows().getItem(row("coil group 5")).getText(5)
                .equals("fails"));
        desktop.until("and the picture follows", () -> !picture.scene().equals(before));

        editor.show(WindingWorkshop.FOUND);
        desktop.settle(editor);
        desktop.until("the old winding's page says where it is", () -> label("left.said")
                .contains("stands on its page"));
        assertFalse(shows("left.rows"), "and does not show it twice");
    }

    private void theCrosshairTellsTheValuesOfAGroup(ChartArea chart, Path csv) throws Exception {
        Event right = new Event();
        right.keyCode = SWT.ARROW_RIGHT;
        right.stateMask = SWT.MOD1;
        chart.canvas().notifyListeners(SWT.KeyDown, right);
        chart.canvas().notifyListeners(SWT.KeyDown, right);
        desktop.work();
        String place = chart.chart().x().places().get(0);
        assertTrue(label("chart.left.reading").startsWith(place + ": As left"), label("chart.left.reading"));
        chart.askCsvFile(() -> Optional.of(csv));
        chart.saveCsv();
        desktop.until("the numbers are saved", () -> Files.exists(csv) && csv.toFile().length() > 200);
    }

    @Test
    void aWindingReadOnlyAsFoundSaysThatNothingWasReadSince() throws Exception {
        JobEditor editor = workshop.beforeWinding();
        editor.show(WindingWorkshop.FOUND);
        desktop.settle(editor);
        desktop.until("it says so", () -> label("left.said").startsWith("Nothing has been read since"));
    }

    private boolean shows(String id) {
        return desktop.shows(id);
    }

    private Table rows() {
        return (Table) desktop.field("left.rows");
    }

    private int row(String label) {
        for (int i = 0; i < rows().getItemCount(); i++) {
            if (rows().getItem(i).getText(0).equals(label)) {
                return i;
            }
        }
        throw new AssertionError(label + " is not in the table");
    }

    private String label(String id) {
        Control c = desktop.field(id);
        return ((org.eclipse.swt.widgets.Label) c).getText();
    }

    private static String texts(PictureCanvas picture) {
        return picture.scene().marks().stream().filter(Mark.Text.class::isInstance).map(m -> ((Mark.Text) m).text())
                .reduce("", (a, b) -> a + " | " + b);
    }
}

package org.copperbook.desk.tests.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.text.SpokenName;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The checks of how pages look find a fault that is planted, and are silent about the same thing done right. */
class FlawsAreFoundTest {

    private final Desktop desktop = new Desktop();
    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(Display.getCurrent(), SWT.NO_TRIM | SWT.ON_TOP);
        shell.setBounds(20, 20, 500, 400);
        shell.open();
        desktop.work();
    }

    @AfterEach
    void close() {
        shell.dispose();
    }

    @Test
    void aClippedWordIsFound() {
        Label label = label("Hold: rectifier set complete", 10, 10, 300, 40);
        assertEquals(List.of(), Clipping.below(shell));
        label.setSize(60, 40);
        assertEquals(1, Clipping.below(shell).size());
    }

    @Test
    void aCellAndAHeadingTooNarrowAreFound() {
        Table table = new Table(shell, SWT.BORDER);
        table.setHeaderVisible(true);
        TableColumn column = new TableColumn(table, SWT.LEFT);
        column.setText("Number");
        new TableItem(table, SWT.NONE).setText("2026-0003 (void)");
        table.setBounds(10, 10, 400, 200);
        column.setWidth(300);
        assertEquals(List.of(), Clipping.below(shell));
        column.setWidth(30);
        assertEquals(2, Clipping.below(shell).size());
    }

    @Test
    void whatReachesOutOfItsPlaceIsFound() {
        Label label = label("words", 10, 10, 100, 40);
        assertEquals(List.of(), Clipping.below(shell));
        label.setLocation(460, 10);
        assertEquals(1, Clipping.below(shell).size());
    }

    @Test
    void neighboursOnEachOtherAreFound() {
        label("one", 10, 10, 100, 40);
        Label other = label("other", 10, 60, 100, 40);
        assertEquals(List.of(), Overlapping.below(shell));
        other.setLocation(50, 30);
        assertEquals(1, Overlapping.below(shell).size());
    }

    @Test
    void aFieldWithoutANameIsFound() {
        Text text = new Text(shell, SWT.BORDER);
        text.setBounds(10, 10, 100, 40);
        assertEquals(1, Names.below(shell).size());
        SpokenName.give(text, "reason");
        assertEquals(List.of(), Names.below(shell));
    }

    @Test
    void aTargetTooSmallForAGloveIsFound() {
        Button button = new Button(shell, SWT.PUSH);
        button.setText("Add row");
        button.setBounds(10, 10, 120, 60);
        assertEquals(List.of(), Targets.below(shell));
        button.setSize(120, 20);
        assertEquals(1, Targets.below(shell).size());
    }

    @Test
    void paleWordsAreFound() {
        shell.setBackground(new Color(255, 255, 255));
        Label label = label("Hold: release", 10, 10, 200, 40);
        label.setBackground(new Color(255, 255, 255));
        label.setForeground(new Color(20, 20, 20));
        assertEquals(List.of(), contrast());
        label.setForeground(new Color(170, 170, 170));
        assertTrue(contrast().size() == 1, "170 of 255 on white is 2.3 : 1");
    }

    private List<Flaw> contrast() {
        shell.redraw();
        shell.update();
        desktop.work();
        return new Contrast(Screen.pixels(), Display.getCurrent().getBounds().width).below(shell);
    }

    private Label label(String words, int x, int y, int width, int height) {
        Label label = new Label(shell, SWT.NONE);
        label.setText(words);
        label.setBounds(x, y, width, height);
        return label;
    }
}

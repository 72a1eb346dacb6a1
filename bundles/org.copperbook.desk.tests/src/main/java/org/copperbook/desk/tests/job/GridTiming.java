package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.GridModel;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.ILazyContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The group grid of 200 groups against a bare JFace virtual table with the same cells, measured in one run. It is no
 * part of the ordinary tests, since a loaded machine would make it fail: {@code mvn -B verify -Dui.test=GridTiming}.
 */
class GridTiming {

    private static final int ROUNDS = 5;
    private static final int EDITS = 20;
    private static final double MOST = 25;

    private final Desktop desktop = new Desktop();
    private final Display display = Display.getCurrent();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void theGridAgainstABareVirtualTable() throws Exception {
        JobEditor editor = LargeWinding.open(desktop);
        RecordGrid grid = desktop.grid("/groups");
        Bare bare = new Bare(grid.table(), grid.model());
        desktop.work();
        double[] own = {best(() -> scroll(grid)), best(() -> repaint(grid.table())), best(() -> edit(grid, editor))};
        double[] plain = {best(() -> bare.scroll()), best(() -> repaint(bare.table())), best(() -> bare.edit())};
        bare.close();
        String[] what = {"scroll through 200 rows", "repaint 20 times", EDITS + " cells edited"};
        for (int i = 0; i < what.length; i++) {
            System.out.printf("%s: grid %.1f ms, bare table %.1f ms, ratio %.2f%n", what[i], own[i], plain[i],
                    own[i] / plain[i]);
            assertTrue(own[i] / plain[i] < MOST, what[i]);
        }
        System.out.printf("one cell from Enter to paint: %.1f ms%n", own[2] / EDITS);
    }

    /** Median of some rounds, ms; the first one warms up. */
    private double best(Runnable round) {
        double[] ms = new double[ROUNDS];
        round.run();
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            round.run();
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        return ms[ROUNDS / 2];
    }

    private void scroll(RecordGrid grid) {
        grid.table().setFocus();
        for (int r = 0; r < LargeWinding.GROUPS; r++) {
            grid.moveTo(r, r % 6);
            paint(grid.table());
        }
    }

    private void repaint(Table table) {
        for (int i = 0; i < 20; i++) {
            table.redraw();
            paint(table);
        }
    }

    /** Types into a cell and leaves it by Enter, each until it is painted; judging goes on beside it as always. */
    private void edit(RecordGrid grid, JobEditor editor) {
        List<String> columns = grid.model().columns().stream().map(c -> c.pointer()).toList();
        int column = columns.indexOf("/resistance/windingCelsius");
        for (int i = 0; i < EDITS; i++) {
            grid.table().setFocus();
            grid.moveTo(i, column);
            var key = new org.eclipse.swt.widgets.Event();
            key.character = '2';
            key.keyCode = '2';
            grid.table().notifyListeners(SWT.KeyDown, key);
            Text open = (Text) desktop.field(grid.model().pointer(i, column));
            open.setText("21." + Math.floorMod(System.nanoTime(), 10));
            open.traverse(SWT.TRAVERSE_RETURN);
            paint(grid.table());
        }
        assertEquals(LargeWinding.GROUPS, grid.model().filled());
    }

    private void paint(Table table) {
        table.update();
        desktop.work();
    }

    /** A bare virtual viewer of the same size, font and cells. */
    private final class Bare {

        private final Shell shell;
        private final TableViewer viewer;
        private final List<String[]> rows = new ArrayList<>();

        Bare(Table like, GridModel model) {
            for (int r = 0; r < model.filled(); r++) {
                String[] row = new String[model.columns().size()];
                for (int c = 0; c < row.length; c++) {
                    row[c] = model.text(r, c);
                }
                rows.add(row);
            }
            shell = new Shell(display, SWT.SHELL_TRIM);
            shell.setLayout(new FillLayout());
            shell.setSize(like.getSize().x + 20, like.getSize().y + 40);
            viewer = new TableViewer(shell, SWT.VIRTUAL | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
            viewer.getTable().setFont(like.getFont());
            viewer.getTable().setHeaderVisible(true);
            viewer.getTable().setLinesVisible(true);
            for (int c = 0; c < model.columns().size(); c++) {
                column(c, like.getColumn(c).getWidth(), model.columns().get(c).title());
            }
            viewer.setContentProvider((ILazyContentProvider) i -> viewer.replace(rows.get(i), i));
            viewer.setUseHashlookup(true);
            viewer.setInput(rows);
            viewer.setItemCount(rows.size());
            shell.open();
        }

        private void column(int c, int width, String title) {
            TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
            column.getColumn().setWidth(width);
            column.getColumn().setText(title);
            column.setLabelProvider(new ColumnLabelProvider() {
                @Override
                public String getText(Object row) {
                    return ((String[]) row)[c];
                }
            });
            column.setEditingSupport(new EditingSupport(viewer) {
                @Override
                protected CellEditor getCellEditor(Object row) {
                    return new TextCellEditor(viewer.getTable());
                }

                @Override
                protected boolean canEdit(Object row) {
                    return true;
                }

                @Override
                protected Object getValue(Object row) {
                    return ((String[]) row)[c];
                }

                @Override
                protected void setValue(Object row, Object value) {
                    ((String[]) row)[c] = String.valueOf(value);
                    viewer.update(row, null);
                }
            });
        }

        Table table() {
            return viewer.getTable();
        }

        void scroll() {
            table().setFocus();
            for (int r = 0; r < rows.size(); r++) {
                table().setSelection(r);
                table().showSelection();
                paint(table());
            }
        }

        void edit() {
            for (int i = 0; i < EDITS; i++) {
                table().setSelection(i);
                viewer.editElement(rows.get(i), 8);
                Text text = (Text) Arrays.stream(table().getChildren()).filter(Text.class::isInstance)
                        .filter(t -> t.isVisible()).findFirst().orElseThrow();
                text.setText("21." + Math.floorMod(System.nanoTime(), 10));
                text.notifyListeners(SWT.DefaultSelection, new org.eclipse.swt.widgets.Event());
                paint(table());
            }
        }

        void close() {
            shell.dispose();
        }
    }
}

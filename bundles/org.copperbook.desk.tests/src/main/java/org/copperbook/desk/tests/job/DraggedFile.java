package org.copperbook.desk.tests.job;

import java.nio.file.Path;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/** A small window, as of a file manager, from which one file is dragged with the pointer itself. */
final class DraggedFile implements AutoCloseable {

    private static final int STEPS = 12;

    private final Desktop desktop;
    private final Shell from;

    DraggedFile(Desktop desktop, Path file) {
        this.desktop = desktop;
        from = new Shell(Display.getCurrent(), SWT.ON_TOP | SWT.NO_TRIM);
        Rectangle screen = from.getDisplay().getBounds();
        from.setBounds(screen.x + screen.width - 90, screen.y + screen.height - 70, 90, 70);
        DragSource source = new DragSource(from, DND.DROP_COPY);
        source.setTransfer(FileTransfer.getInstance());
        source.addDragListener(new DragSourceAdapter() {
            @Override
            public void dragSetData(DragSourceEvent e) {
                e.data = new String[] {file.toString()};
            }
        });
        // Shown without being made active: the keyboard stays with the window that is tested.
        from.setVisible(true);
        desktop.pause(300);
    }

    void onto(Control target) {
        Point start = from.toDisplay(40, 30);
        Point end = target.toDisplay(target.getSize().x / 2, Math.min(10, target.getSize().y / 2));
        move(start);
        button(SWT.MouseDown);
        for (int i = 1; i <= STEPS; i++) {
            move(new Point(start.x + (end.x - start.x) * i / STEPS, start.y + (end.y - start.y) * i / STEPS));
        }
        move(new Point(end.x + 1, end.y));
        desktop.pause(300);
        button(SWT.MouseUp);
        desktop.pause(300);
    }

    private void move(Point to) {
        Event e = new Event();
        e.type = SWT.MouseMove;
        e.x = to.x;
        e.y = to.y;
        Display.getCurrent().post(e);
        desktop.pause(40);
    }

    private void button(int type) {
        Event e = new Event();
        e.type = type;
        e.button = 1;
        Display.getCurrent().post(e);
        desktop.pause(60);
    }

    @Override
    public void close() {
        from.dispose();
    }
}

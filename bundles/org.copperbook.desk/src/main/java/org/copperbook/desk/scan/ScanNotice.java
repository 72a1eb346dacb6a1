package org.copperbook.desk.scan;

import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Words over a window for some seconds, without taking the keyboard; a click takes them away. */
final class ScanNotice {

    private static final int SHOWN_MILLIS = 12_000;
    private static final int CHARS = 46;

    private Shell shell;

    void show(Shell over, String words) {
        hide();
        Look look = Look.of(over);
        Shell here = new Shell(over, SWT.ON_TOP | SWT.TOOL | SWT.NO_FOCUS);
        shell = here;
        here.setData(Desk.ID, "scan/notice");
        here.setBackground(look.palette().accent());
        GridLayoutFactory.fillDefaults().margins(3, 3).applyTo(here);
        Composite body = new Composite(here, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(12, 10).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        Label said = look.as(Look.Role.STRONG, new Label(body, SWT.WRAP));
        said.setText(words);
        said.setData(Desk.ID, "scan/said");
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(said);
        for (Control c : new Control[] {here, body, said}) {
            c.addListener(SWT.MouseDown, e -> here.dispose());
        }
        here.pack();
        Point size = here.getSize();
        Rectangle window = over.getBounds();
        here.setLocation(window.x + (window.width - size.x) / 2, window.y + window.height / 3);
        here.setVisible(true);
        over.getDisplay().timerExec(SHOWN_MILLIS, () -> {
            if (!here.isDisposed()) {
                here.dispose();
            }
        });
    }

    void hide() {
        if (shell != null && !shell.isDisposed()) {
            shell.dispose();
        }
    }
}

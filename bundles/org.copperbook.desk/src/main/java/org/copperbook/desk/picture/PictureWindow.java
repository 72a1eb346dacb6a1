package org.copperbook.desk.picture;

import org.copperbook.desk.Desk;
import org.copperbook.desk.scan.ScannedJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * A picture of a page in a window of its own, as large as the screen allows. It follows what the page shows, a click in
 * it does what a click on the page does, and it goes with the page; Esc closes it.
 */
final class PictureWindow {

    private static final double OF_SCREEN = 0.9;

    private final PictureCanvas page;
    private final Shell shell;
    private final PictureCanvas large;
    private final Label said;

    PictureWindow(PictureCanvas page) {
        this.page = page;
        shell = new Shell(page.getShell(), SWT.CLOSE | SWT.RESIZE | SWT.MAX | SWT.TITLE);
        ScannedJob.givesWay(shell);
        shell.setData(Desk.ID, "picture/window");
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 6).applyTo(shell);
        large = new PictureCanvas(shell);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(large);
        Look look = Look.of(shell);
        said = look.as(Look.Role.TEXT, new Label(shell, SWT.WRAP));
        said.setText(DeskWords.text("picture.keys"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        PictureButtons buttons = new PictureButtons(shell, large, true);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        Reach.ensure(shell);
        large.onPick(page::pick);
        large.output().onSaid(this::say);
        large.output().like(page.output());
        page.onShown(this::follow);
        page.onHighlight(this::follow);
        page.addDisposeListener(e -> shell.dispose());
        shell.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                shell.close();
            }
        });
        Rectangle screen = page.getMonitor().getClientArea();
        shell.setBounds(screen.x + (int) (screen.width * (1 - OF_SCREEN) / 2),
                screen.y + (int) (screen.height * (1 - OF_SCREEN) / 2), (int) (screen.width * OF_SCREEN),
                (int) (screen.height * OF_SCREEN));
    }

    void open() {
        follow();
        shell.open();
        large.setFocus();
    }

    private void follow() {
        if (!shell.isDisposed()) {
            shell.setText(page.scene().title());
            large.show(page.scene());
            large.highlight(page.highlighted());
        }
    }

    private void say(String words) {
        said.setText(words);
        shell.layout(true, true);
    }
}

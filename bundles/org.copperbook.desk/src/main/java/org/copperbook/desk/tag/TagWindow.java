package org.copperbook.desk.tag;

import org.copperbook.desk.Desk;
import org.copperbook.desk.picture.PictureButtons;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.scan.ScannedJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.tag.JobTag;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Tag and job card side by side in a window of their own, to be printed in their real size or saved; Esc closes it. */
public final class TagWindow {

    private static final double OF_SCREEN = 0.85;

    private final Shell shell;
    private final Label said;

    /** @param number number of the job, for the window's title */
    public TagWindow(Shell parent, String number, JobTag tag) {
        shell = new Shell(parent, SWT.CLOSE | SWT.RESIZE | SWT.MAX | SWT.TITLE);
        ScannedJob.givesWay(shell);
        shell.setText(DeskWords.text("tag.title", number));
        shell.setData(Desk.ID, "tag/window");
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).margins(8, 8).spacing(12, 6).applyTo(shell);
        said = Look.of(shell).as(Look.Role.TEXT, new Label(shell, SWT.WRAP));
        said.setText(DeskWords.text("tag.hint"));
        said.setData(Desk.ID, "tag/said");
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(Look.of(shell).wrapping(), SWT.DEFAULT).applyTo(said);
        PictureCanvas first = side("tag.tag", "tag/label", tag.tag());
        side("tag.card", "tag/card", tag.card());
        Reach.ensure(shell);
        shell.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                shell.close();
            }
        });
        Rectangle screen = parent.getMonitor().getClientArea();
        shell.setBounds(screen.x + (int) (screen.width * (1 - OF_SCREEN) / 2),
                screen.y + (int) (screen.height * (1 - OF_SCREEN) / 2), (int) (screen.width * OF_SCREEN),
                (int) (screen.height * OF_SCREEN));
        shell.open();
        first.setFocus();
    }

    private PictureCanvas side(String title, String id, Scene scene) {
        Composite side = new Composite(shell, SWT.NONE);
        GridLayout layout = GridLayoutFactory.fillDefaults().spacing(0, 6).create();
        side.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(side);
        Label head = Look.of(shell).as(Look.Role.STRONG, new Label(side, SWT.NONE));
        head.setText(DeskWords.text(title));
        PictureCanvas canvas = new PictureCanvas(side);
        canvas.setData(Desk.ID, id);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        canvas.show(scene);
        canvas.output().onSaid(this::say);
        canvas.output().inRealSize(JobTag.UNITS_PER_INCH);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(new PictureButtons(side, canvas));
        return canvas;
    }

    private void say(String words) {
        said.setText(words);
        shell.layout(true, true);
    }
}

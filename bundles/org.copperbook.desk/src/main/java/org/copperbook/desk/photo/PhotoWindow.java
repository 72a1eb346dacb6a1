package org.copperbook.desk.photo;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.scan.ScannedJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.store.JobStore;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/** A photo as large as the screen allows: arrow keys show the others of the part, Esc or a click closes it. */
final class PhotoWindow {

    private static final double OF_SCREEN = 0.9;

    private final Shell shell;
    private final Canvas canvas;
    private final JobStore store;
    private final ArrayNode photos;
    private int at;
    private Image image;
    private String words = "";

    PhotoWindow(Shell parent, JobStore store, ArrayNode photos, int first) {
        this.store = store;
        this.photos = photos;
        this.at = first;
        shell = new Shell(parent, SWT.CLOSE | SWT.RESIZE | SWT.MAX | SWT.TITLE);
        ScannedJob.givesWay(shell);
        shell.setLayout(new FillLayout());
        shell.setData(Desk.ID, "photo/large");
        canvas = new Canvas(shell, SWT.DOUBLE_BUFFERED);
        canvas.setBackground(Look.of(shell).palette().paper());
        SpokenName.give(canvas, DeskWords.text("photo.large"));
        canvas.addListener(SWT.Paint, e -> paint(e.gc));
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.MouseUp, e -> shell.close());
        shell.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                shell.close();
            }
        });
        shell.addDisposeListener(e -> forget());
        Rectangle screen = parent.getMonitor().getClientArea();
        shell.setBounds(screen.x + (int) (screen.width * (1 - OF_SCREEN) / 2),
                screen.y + (int) (screen.height * (1 - OF_SCREEN) / 2), (int) (screen.width * OF_SCREEN),
                (int) (screen.height * OF_SCREEN));
    }

    void open() {
        shell.open();
        canvas.setFocus();
        load();
    }

    private void key(Event e) {
        int by = switch (e.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_UP, SWT.PAGE_UP -> -1;
            case SWT.ARROW_RIGHT, SWT.ARROW_DOWN, SWT.PAGE_DOWN, ' ' -> 1;
            default -> 0;
        };
        if (by != 0 && photos.size() > 1) {
            at = Math.floorMod(at + by, photos.size());
            load();
        } else if (e.keyCode == SWT.CR || e.keyCode == SWT.ESC) {
            shell.close();
        }
    }

    private void load() {
        String hash = photos.path(at).path("hash").asText("");
        String name = photos.path(at).path("name").asText("");
        String caption = photos.path(at).path("caption").asText("");
        shell.setText(DeskWords.text("photo.title", caption.isEmpty() ? name : caption, at + 1, photos.size()));
        forget();
        words = DeskWords.text("photo.coming");
        canvas.redraw();
        int mine = at;
        Display display = shell.getDisplay();
        Rectangle room = shell.getClientArea();
        new DeskJob(DeskWords.text("photo.making"), monitor -> {
            Optional<ImageData> large = store.photo(hash).flatMap(b -> Pixels.shown(b, room.width, room.height));
            display.asyncExec(() -> {
                if (!shell.isDisposed() && mine == at) {
                    words = large.isPresent() ? "" : DeskWords.text("photo.cannotShowLarge");
                    image = large.map(d -> new Image(display, d)).orElse(null);
                    canvas.redraw();
                }
            });
        }).schedule();
    }

    private void paint(GC gc) {
        Rectangle all = canvas.getClientArea();
        if (image == null) {
            Look look = Look.of(canvas);
            gc.setFont(look.font(Look.Role.TEXT));
            gc.setForeground(look.palette().text());
            gc.drawText(words, all.x + look.rowHeight(), all.y + look.rowHeight(), true);
            return;
        }
        Rectangle size = image.getBounds();
        double scale = Math.min(1, Math.min((double) all.width / size.width, (double) all.height / size.height));
        int w = Math.max(1, (int) (size.width * scale));
        int h = Math.max(1, (int) (size.height * scale));
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(image, 0, 0, size.width, size.height, (all.width - w) / 2, (all.height - h) / 2, w, h);
    }

    private void forget() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }
}

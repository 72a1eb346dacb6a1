package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.picture.PicturePage;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Tag and job card of an open job, from the menu to the paper. */
class TagAndCardTest {

    private static final String COMMAND = "org.copperbook.desk.command.tag";

    /** Dots that the blank line round a printed picture may reach beyond it. */
    private static final int EDGE = 2;

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private Scene scene(String id) {
        return ((PictureCanvas) desktop.field(id)).scene();
    }

    private static boolean says(Scene scene, String words) {
        return scene.marks().stream().anyMatch(m -> m instanceof Mark.Text t && t.text().contains(words));
    }

    @Test
    void theCommandShowsBothForTheOpenJobAndEscCloses() throws Exception {
        desktop.open("2026-0001");
        desktop.command(COMMAND);
        assertTrue(says(scene("tag/label"), "2026-0001"));
        assertTrue(says(scene("tag/card"), "2026-0001"));
        desktop.until("the tag has the keyboard", () -> desktop.field("tag/label").isFocusControl());
        new Keyboard(desktop).press(SWT.ESC);
        desktop.until("Esc closes the window", () -> !desktop.shows("tag/card"));
    }

    @Test
    void theTagComesOutInItsSizeOnLargerPaperAndWholeOnSmaller() throws Exception {
        desktop.open("2026-0001");
        desktop.command(COMMAND);
        Scene tag = scene("tag/label");
        // 100 x 50 mm are 787 x 394 dots at 200 dpi.
        assertEquals(787, inked(tag, new Rectangle(0, 0, 1600, 2300), 200 / 96.0).width, 8);
        Rectangle small = inked(tag, new Rectangle(0, 0, 400, 300), 200 / 96.0);
        assertTrue(small.width <= 400 && small.height <= 200 + EDGE, small.toString());
    }

    /** The part of the paper that is no longer the grey it was. */
    private static Rectangle inked(Scene scene, Rectangle paper, double scale) {
        Display display = Display.getCurrent();
        Image image = new Image(display, paper.width, paper.height);
        GC gc = new GC(image);
        try {
            gc.setBackground(display.getSystemColor(SWT.COLOR_GREEN));
            gc.fillRectangle(paper);
            RGB bare = display.getSystemColor(SWT.COLOR_GREEN).getRGB();
            PicturePage.inSize(gc, scene, paper, scale);
            ImageData data = image.getImageData();
            int right = 0;
            int bottom = 0;
            for (int y = 0; y < data.height; y++) {
                for (int x = 0; x < data.width; x++) {
                    if (!data.palette.getRGB(data.getPixel(x, y)).equals(bare)) {
                        right = Math.max(right, x + 1);
                        bottom = Math.max(bottom, y + 1);
                    }
                }
            }
            return new Rectangle(0, 0, right, bottom);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}

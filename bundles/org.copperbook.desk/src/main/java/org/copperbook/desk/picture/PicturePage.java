package org.copperbook.desk.picture;

import java.io.ByteArrayInputStream;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;

/** One scene on one page, as large as the paper allows, in black and grey. */
public final class PicturePage {

    private static final double MM_PER_INCH = 25.4;
    private static final double MARGIN_MM = 12;
    private static final double IMAGE_SCALE = 3;

    private PicturePage() {
    }

    /** How the paper is turned for a scene. */
    static int orientation(Scene scene) {
        return scene.width() > scene.height() ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
    }

    /** Prints a scene; false when the printer refused. */
    public static boolean print(Printer printer, Scene scene) {
        if (!printer.startJob(scene.title())) {
            return false;
        }
        if (!printer.startPage()) {
            printer.cancelJob();
            return false;
        }
        GC gc = new GC(printer);
        try {
            paint(gc, scene, printer.getClientArea(), printer.getDPI().x * MARGIN_MM / MM_PER_INCH);
        } finally {
            gc.dispose();
        }
        printer.endPage();
        printer.endJob();
        return true;
    }

    /**
     * Paints a scene as it is printed into an area, as large as it fits.
     *
     * @param margin kept free on every side, in units of the area
     */
    public static void paint(GC gc, Scene scene, Rectangle area, double margin) {
        double scale = Math.min((area.width - 2 * margin) / scene.width(), (area.height - 2 * margin) / scene.height());
        // As an image: the transforms that lines and words need are not those of the paper on every printer.
        ImageData data = new ImageData(new ByteArrayInputStream(PngPicture.of(scene, ScenePalette.PRINT, IMAGE_SCALE)));
        Image image = new Image(gc.getDevice(), data);
        try {
            int width = (int) (scene.width() * scale);
            gc.drawImage(image, 0, 0, data.width, data.height, area.x + (area.width - width) / 2, (int) (area.y + margin),
                    width, (int) (scene.height() * scale));
        } finally {
            image.dispose();
        }
    }
}

package org.copperbook.desk.picture;

import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;

/** One scene on one page, as large as the paper allows, in black and grey. */
public final class PicturePage {

    private static final double MM_PER_INCH = 25.4;
    private static final double MARGIN_MM = 12;

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
        ScenePainter.paint(gc, scene, ScenePalette.PRINT, area.x + (area.width - scene.width() * scale) / 2,
                area.y + margin, scale, "");
    }
}

package org.copperbook.desk.picture;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.eclipse.swt.SWT;
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
    /** Width of the blank edge in units of a scene. */
    private static final double EDGE = 2;
    private static final double HEADING_SIZE = 12;
    private static final double HEADING_LINE = 17;
    /** Words of 10 points are so high over a margin of 12 mm. */
    private static final double HEADING_OF_MARGIN = 0.3;

    private PicturePage() {
    }

    /** How the paper is turned for a scene. */
    static int orientation(Scene scene) {
        return scene.width() > scene.height() ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
    }

    /**
     * Prints a scene; false when the printer refused.
     *
     * @param heading      lines that stand over it
     * @param unitsPerInch units of the scene to an inch of paper for a scene with a size of its own; 0 for one that is
     *                     printed as large as it fits
     */
    static boolean print(Printer printer, List<String> heading, Scene scene, double unitsPerInch) {
        if (!printer.startJob(scene.title())) {
            return false;
        }
        if (!printer.startPage()) {
            printer.cancelJob();
            return false;
        }
        GC gc = new GC(printer);
        try {
            int dpi = printer.getDPI().x;
            if (unitsPerInch > 0) {
                inSize(gc, scene, printer.getClientArea(), dpi / unitsPerInch);
            } else {
                paint(gc, heading, scene, printer.getClientArea(), dpi * MARGIN_MM / MM_PER_INCH);
            }
        } finally {
            gc.dispose();
        }
        printer.endPage();
        printer.endJob();
        return true;
    }

    /**
     * Paints a scene as it is printed into an area, as large as it fits under its heading.
     *
     * @param heading lines that stand over it
     * @param margin  kept free on every side, in units of the area
     */
    public static void paint(GC gc, List<String> heading, Scene scene, Rectangle area, double margin) {
        double room = area.width - 2 * margin;
        double top = margin;
        if (!heading.isEmpty()) {
            double scale = margin * HEADING_OF_MARGIN / HEADING_SIZE;
            Scene over = heading(heading, room / scale);
            image(gc, over, area.x + margin, area.y + top, scale);
            top += over.height() * scale;
        }
        double scale = Math.min(room / scene.width(), (area.height - top - margin) / scene.height());
        image(gc, scene, area.x + (area.width - scene.width() * scale) / 2, area.y + top, scale);
    }

    /**
     * Paints a scene in a size of its own into the upper left corner of an area, smaller only where it would not fit.
     *
     * @param scale units of the area to one of the scene
     */
    public static void inSize(GC gc, Scene scene, Rectangle area, double scale) {
        double most = Math.min(area.width / scene.width(), area.height / scene.height());
        image(gc, scene, area.x, area.y, Math.min(scale, most));
    }

    /** As an image: the transforms and fonts that lines and words need are not those of the paper on every printer. */
    private static void image(GC gc, Scene scene, double x, double y, double scale) {
        ImageData data = new ImageData(new ByteArrayInputStream(PngPicture.of(scene, ScenePalette.PRINT, IMAGE_SCALE)));
        Image image = new Image(gc.getDevice(), data);
        try {
            Rectangle at = new Rectangle((int) x, (int) y, (int) (scene.width() * scale), (int) (scene.height() * scale));
            gc.drawImage(image, 0, 0, data.width, data.height, at.x, at.y, at.width, at.height);
            // Some printers blend the outermost row with black while they enlarge; no picture has anything there.
            gc.setForeground(gc.getDevice().getSystemColor(SWT.COLOR_WHITE));
            gc.setLineWidth(Math.max(2, (int) (EDGE * scale)));
            gc.drawRectangle(at);
        } finally {
            image.dispose();
        }
    }

    private static Scene heading(List<String> lines, double width) {
        List<Mark> marks = new ArrayList<>();
        double y = HEADING_LINE / 2;
        for (String line : lines) {
            marks.add(fitting(line, y, width));
            y += HEADING_LINE;
        }
        marks.add(new Mark.Line("", ScenePalette.TEXT, 1, false, List.of(new Point(2 * EDGE, y), new Point(width - 2 * EDGE, y))));
        return new Scene(lines.get(0), width, y + HEADING_LINE, marks);
    }

    private static Mark.Text fitting(String line, double y, double width) {
        Mark.Text text = text(line, y);
        for (int end = line.length() - 1; end > 0 && text.width() > width - 4 * EDGE; end--) {
            text = text(line.substring(0, end) + "\u2026", y);
        }
        return text;
    }

    private static Mark.Text text(String words, double y) {
        return new Mark.Text("", ScenePalette.TEXT, new Point(2 * EDGE, y), Mark.Anchor.START, HEADING_SIZE, false, words);
    }
}

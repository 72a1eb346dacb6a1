package org.copperbook.desk.picture;

import java.util.List;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Mark.Arc;
import org.copperbook.sheets.picture.Mark.Line;
import org.copperbook.sheets.picture.Mark.Text;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Transform;

/** Paints a scene on the window, an image or a printer's page. */
final class ScenePainter {

    private static final int FONT_POINTS = 24;
    private static final double POINTS_PER_INCH = 72;
    private static final float HALO = 3;
    private static final float SHINE = 7;

    private final GC gc;
    private final Device device;
    private final ScenePalette palette;
    private final float x;
    private final float y;
    private final float scale;

    private ScenePainter(GC gc, ScenePalette palette, double x, double y, double scale) {
        this.gc = gc;
        this.device = gc.getDevice();
        this.palette = palette;
        this.x = (float) x;
        this.y = (float) y;
        this.scale = (float) scale;
    }

    /**
     * Paints all marks.
     *
     * @param x     where the left edge of the scene lies, in units of the GC
     * @param y     where its upper edge lies
     * @param scale units of the GC for one of the scene
     * @param chosen id of what is highlighted; empty for nothing
     */
    static void paint(GC gc, Scene scene, ScenePalette palette, double x, double y, double scale, String chosen) {
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        new ScenePainter(gc, palette, x, y, scale).paint(scene, chosen);
    }

    private void paint(Scene scene, String chosen) {
        FontData data = device.getSystemFont().getFontData()[0];
        data.setHeight(FONT_POINTS);
        data.setStyle(SWT.NORMAL);
        Font font = new Font(device, data);
        Transform at = new Transform(device, scale, 0, 0, scale, x, y);
        try {
            gc.setFont(font);
            gc.setTransform(at);
            scene.showing(chosen).forEach(this::shine);
            for (Mark mark : scene.marks()) {
                boolean strong = Scene.shows(mark.id(), chosen);
                if (mark instanceof Text text) {
                    text(text, font, at);
                } else {
                    shape(mark, palette.colour(mark.style()), strong ? 1.6f : 1);
                }
            }
        } finally {
            gc.setTransform(null);
            gc.setFont(null);
            at.dispose();
            font.dispose();
        }
    }

    /** Lays a wide band under a mark that is highlighted. */
    private void shine(Mark mark) {
        gc.setAlpha(90);
        if (mark instanceof Text text) {
            gc.setBackground(colour(palette.colour(ScenePalette.HIGHLIGHT)));
            gc.fillRectangle((int) text.left() - 2, (int) (text.at().y() - text.size() * 0.75), (int) text.width() + 4,
                    (int) (text.size() * 1.5));
        } else {
            Path path = path(mark);
            gc.setForeground(colour(palette.colour(ScenePalette.HIGHLIGHT)));
            gc.setLineAttributes(new LineAttributes(SHINE, SWT.CAP_ROUND, SWT.JOIN_ROUND));
            gc.drawPath(path);
            path.dispose();
        }
        gc.setAlpha(255);
    }

    private void shape(Mark mark, int rgb, float stronger) {
        double width = mark instanceof Line l ? l.width() : mark instanceof Arc a ? a.width() : 0;
        boolean filled = mark instanceof Line l ? l.filled() : mark instanceof Arc a && a.filled();
        Path path = path(mark);
        try {
            if (filled) {
                gc.setBackground(colour(rgb));
                gc.fillPath(path);
            }
            if (width > 0) {
                LineAttributes line = new LineAttributes((float) width * stronger, SWT.CAP_FLAT, SWT.JOIN_ROUND);
                List<Double> pattern = filled ? List.of() : ScenePalette.pattern(mark.style());
                if (!pattern.isEmpty()) {
                    line.style = SWT.LINE_CUSTOM;
                    line.dash = new float[pattern.size()];
                    for (int i = 0; i < line.dash.length; i++) {
                        line.dash[i] = pattern.get(i).floatValue();
                    }
                }
                gc.setForeground(colour(rgb));
                gc.setLineAttributes(line);
                gc.drawPath(path);
            }
        } finally {
            path.dispose();
        }
    }

    private Path path(Mark mark) {
        Path path = new Path(device);
        if (mark instanceof Line line) {
            List<Point> points = line.points();
            for (int i = 0; i < points.size(); i++) {
                float px = (float) points.get(i).x();
                float py = (float) points.get(i).y();
                if (i == 0) {
                    path.moveTo(px, py);
                } else {
                    path.lineTo(px, py);
                }
            }
            if (line.filled()) {
                path.close();
            }
        } else if (mark instanceof Arc arc) {
            float r = (float) arc.radius();
            path.addArc((float) arc.centre().x() - r, (float) arc.centre().y() - r, 2 * r, 2 * r,
                    (float) arc.startDegrees(), (float) arc.sweepDegrees());
            if (Math.abs(arc.sweepDegrees()) >= 360) {
                path.close();
            }
        }
        return path;
    }

    /** Text in one size of font, brought to its own by scaling: fonts of a device have whole sizes only. */
    private void text(Text text, Font font, Transform back) {
        double fontPixels = FONT_POINTS * device.getDPI().y / POINTS_PER_INCH;
        float by = (float) (text.size() / fontPixels);
        org.eclipse.swt.graphics.Point extent = gc.textExtent(text.text());
        double shift = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> extent.x / 2.0;
            case END -> extent.x;
        };
        Transform own = new Transform(device, scale * by, 0, 0, scale * by, (float) (x + scale * text.at().x()),
                (float) (y + scale * text.at().y()));
        own.translate((float) -shift, -extent.y / 2f);
        gc.setTransform(own);
        if (text.backed()) {
            Path halo = new Path(device);
            halo.addString(text.text(), 0, 0, font);
            gc.setForeground(colour(palette.paper()));
            gc.setLineAttributes(new LineAttributes(HALO / by, SWT.CAP_ROUND, SWT.JOIN_ROUND));
            gc.drawPath(halo);
            halo.dispose();
        }
        gc.setForeground(colour(palette.colour(text.style())));
        gc.drawText(text.text(), 0, 0, SWT.DRAW_TRANSPARENT);
        gc.setTransform(back);
        own.dispose();
    }

    private static Color colour(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }
}

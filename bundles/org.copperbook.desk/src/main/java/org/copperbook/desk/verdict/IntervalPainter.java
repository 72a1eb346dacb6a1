package org.copperbook.desk.verdict;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.theme.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Draws an interval bar: a line, limits as ticks, the uncertainty as a whisker, the value as a dot that is filled when
 * it meets, hollow when doubtful, crossed when it fails. Colour only repeats that.
 */
public final class IntervalPainter {

    private IntervalPainter() {
    }

    /** Draws into an area. */
    public static void paint(GC gc, Rectangle area, IntervalScale scale, Outcome outcome, Palette palette) {
        if (scale.isEmpty()) {
            return;
        }
        int oldWidth = gc.getLineWidth();
        Color oldFore = gc.getForeground();
        Color oldBack = gc.getBackground();
        gc.setAntialias(SWT.ON);
        int y = area.y + area.height / 2;
        int tick = Math.max(4, area.height / 3);
        gc.setForeground(palette.line());
        gc.setLineWidth(1);
        gc.drawLine(area.x, y, area.x + area.width, y);
        gc.setForeground(palette.text());
        gc.setLineWidth(2);
        tick(gc, area, scale.lower(), y, tick);
        tick(gc, area, scale.upper(), y, tick);
        Color colour = palette.of(outcome);
        gc.setForeground(colour);
        if (!Double.isNaN(scale.low())) {
            int from = x(area, scale.low());
            int to = x(area, scale.high());
            gc.setLineWidth(2);
            gc.drawLine(from, y, to, y);
            gc.drawLine(from, y - tick / 2, from, y + tick / 2);
            gc.drawLine(to, y - tick / 2, to, y + tick / 2);
        }
        if (!Double.isNaN(scale.value())) {
            dot(gc, x(area, scale.value()), y, Math.max(4, Math.min(7, area.height / 4)), outcome, colour, palette);
        }
        gc.setLineWidth(oldWidth);
        gc.setForeground(oldFore);
        gc.setBackground(oldBack);
    }

    private static void dot(GC gc, int x, int y, int r, Outcome outcome, Color colour, Palette palette) {
        gc.setLineWidth(2);
        gc.setBackground(outcome == Outcome.MEETS ? colour : palette.paper());
        gc.fillOval(x - r, y - r, 2 * r, 2 * r);
        gc.drawOval(x - r, y - r, 2 * r, 2 * r);
        if (outcome == Outcome.FAILS) {
            int d = r + 1;
            gc.drawLine(x - d, y - d, x + d, y + d);
            gc.drawLine(x - d, y + d, x + d, y - d);
        }
    }

    private static void tick(GC gc, Rectangle area, double at, int y, int half) {
        if (!Double.isNaN(at)) {
            int x = x(area, at);
            gc.drawLine(x, y - half, x, y + half);
        }
    }

    private static int x(Rectangle area, double at) {
        return area.x + (int) Math.round(area.width * at);
    }
}

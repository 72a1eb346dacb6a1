package org.copperbook.sheets.bar;

import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.ShapeTypes;
import org.apache.poi.xssf.usermodel.XSSFChildAnchor;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFConnector;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.copperbook.calc.verdict.Outcome;

/**
 * Draws interval bars into cells as shapes: a scale, limits as ticks, the uncertainty as a whisker, the value as a dot
 * that is filled when it meets, hollow when doubtful and crossed when it fails. All black: the shape says it.
 */
public final class BarDrawing {

    /** Sizes inside a bar, in the units of the drawing (1/12700 point). */
    private static final int HIGH = 160_000;
    private static final int MIDDLE = HIGH / 2;
    private static final int TICK = 62_000;
    private static final int CAP = 30_000;
    private static final int DOT = 42_000;
    private static final int PER_PIXEL = 9_525;
    private static final int PER_POINT = 12_700;

    private final XSSFSheet sheet;
    private final XSSFDrawing drawing;

    public BarDrawing(XSSFSheet sheet) {
        this.sheet = sheet;
        this.drawing = sheet.createDrawingPatriarch();
    }

    /**
     * Draws one bar into the cells of a row; nothing when the scale is empty.
     *
     * @param column first column
     * @param span   columns
     * @param said   what the bar says, for those who cannot see it
     */
    public void draw(int row, int column, int span, BarScale scale, Outcome outcome, String said) {
        if (scale.isEmpty()) {
            return;
        }
        int height = Math.round(sheet.getRow(row).getHeightInPoints() * PER_POINT);
        int top = Math.max(0, (height - HIGH) / 2);
        int last = column + span - 1;
        int right = Math.round(sheet.getColumnWidthInPixels(last)) * PER_PIXEL - 3 * PER_PIXEL;
        XSSFClientAnchor anchor = new XSSFClientAnchor(3 * PER_PIXEL, top, right, Math.min(height, top + HIGH), column,
                row, last, row);
        anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_AND_RESIZE);
        XSSFShapeGroup group = drawing.createGroup(anchor);
        int wide = right - 3 * PER_PIXEL;
        for (int i = column; i < last; i++) {
            wide += Math.round(sheet.getColumnWidthInPixels(i)) * PER_PIXEL;
        }
        group.setCoordinates(0, 0, wide, HIGH);
        group.getCTGroupShape().getNvGrpSpPr().getCNvPr().setDescr(said);
        line(group, 0, MIDDLE, wide, MIDDLE, 0.5);
        tick(group, wide, scale.lower());
        tick(group, wide, scale.upper());
        whisker(group, wide, scale);
        dot(group, wide, scale.value(), outcome);
    }

    private static void tick(XSSFShapeGroup group, int wide, double at) {
        if (!Double.isNaN(at)) {
            line(group, x(wide, at), MIDDLE - TICK, x(wide, at), MIDDLE + TICK, 1.75);
        }
    }

    private static void whisker(XSSFShapeGroup group, int wide, BarScale scale) {
        if (!Double.isNaN(scale.low()) && !Double.isNaN(scale.high())) {
            line(group, x(wide, scale.low()), MIDDLE, x(wide, scale.high()), MIDDLE, 1.5);
            line(group, x(wide, scale.low()), MIDDLE - CAP, x(wide, scale.low()), MIDDLE + CAP, 1);
            line(group, x(wide, scale.high()), MIDDLE - CAP, x(wide, scale.high()), MIDDLE + CAP, 1);
        }
    }

    private static void dot(XSSFShapeGroup group, int wide, double at, Outcome outcome) {
        if (Double.isNaN(at)) {
            return;
        }
        int x = x(wide, at);
        XSSFSimpleShape dot = group.createSimpleShape(box(x - DOT, MIDDLE - DOT, x + DOT, MIDDLE + DOT));
        dot.setShapeType(ShapeTypes.ELLIPSE);
        dot.setLineWidth(1);
        dot.setLineStyleColor(0, 0, 0);
        int fill = outcome == Outcome.MEETS ? 0 : 255;
        dot.setFillColor(fill, fill, fill);
        if (outcome == Outcome.FAILS) {
            int d = DOT + 18_000;
            line(group, x - d, MIDDLE - d, x + d, MIDDLE + d, 1.25);
            XSSFConnector rising = line(group, x - d, MIDDLE - d, x + d, MIDDLE + d, 1.25);
            rising.getCTConnector().getSpPr().getXfrm().setFlipV(true);
        }
    }

    private static XSSFConnector line(XSSFShapeGroup group, int x1, int y1, int x2, int y2, double width) {
        XSSFConnector line = group.createConnector(box(x1, y1, x2, y2));
        line.setShapeType(ShapeTypes.LINE);
        line.setLineWidth(width);
        line.setLineStyleColor(0, 0, 0);
        return line;
    }

    private static XSSFChildAnchor box(int x1, int y1, int x2, int y2) {
        return new XSSFChildAnchor(x1, y1, x2, y2);
    }

    private static int x(int wide, double at) {
        return (int) Math.round(at * wide);
    }
}

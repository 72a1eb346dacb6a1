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

    /** Coordinates inside a bar. */
    private static final int WIDE = 1_000_000;
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
        group.setCoordinates(0, 0, WIDE, HIGH);
        group.getCTGroupShape().getNvGrpSpPr().getCNvPr().setDescr(said);
        line(group, 0, MIDDLE, WIDE, MIDDLE, 0.5);
        tick(group, scale.lower());
        tick(group, scale.upper());
        whisker(group, scale);
        dot(group, scale.value(), outcome);
    }

    private static void tick(XSSFShapeGroup group, double at) {
        if (!Double.isNaN(at)) {
            line(group, x(at), MIDDLE - TICK, x(at), MIDDLE + TICK, 1.75);
        }
    }

    private static void whisker(XSSFShapeGroup group, BarScale scale) {
        if (!Double.isNaN(scale.low()) && !Double.isNaN(scale.high())) {
            line(group, x(scale.low()), MIDDLE, x(scale.high()), MIDDLE, 1.5);
            line(group, x(scale.low()), MIDDLE - CAP, x(scale.low()), MIDDLE + CAP, 1);
            line(group, x(scale.high()), MIDDLE - CAP, x(scale.high()), MIDDLE + CAP, 1);
        }
    }

    private static void dot(XSSFShapeGroup group, double at, Outcome outcome) {
        if (Double.isNaN(at)) {
            return;
        }
        int x = x(at);
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

    private static int x(double at) {
        return (int) Math.round(at * WIDE);
    }
}

package org.copperbook.sheets.registers;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.ReadingOrder;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;

/** The cell styles of a list, each made once, on a base font of 10 points. */
final class ListStyles {

    private static final String FONT = "Arial";
    private static final short POINTS = 10;

    /** The red of what fails, dark enough to be read on white (7 : 1). */
    private static final byte[] WARNING = {(byte) 176, 20, 20};

    private final SXSSFWorkbook book;
    private final CellStyle head;
    private final CellStyle numberHead;
    private final CellStyle text;
    private final CellStyle quoted;
    private final CellStyle textFromTheRight;
    private final CellStyle quotedFromTheRight;
    private final CellStyle number;
    private final CellStyle date;
    private final CellStyle warning;

    ListStyles(SXSSFWorkbook book) {
        this.book = book;
        XSSFFont base = book.getXSSFWorkbook().getFontAt(0);
        base.setFontName(FONT);
        base.setFontHeightInPoints(POINTS);
        head = headStyle();
        numberHead = right(headStyle());
        text = style();
        quoted = quoted(style());
        textFromTheRight = fromTheRight(style());
        quotedFromTheRight = fromTheRight(quoted(style()));
        number = right(style());
        number.setWrapText(false);
        date = style();
        date.setWrapText(false);
        date.setAlignment(HorizontalAlignment.LEFT);
        date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
        warning = style();
        XSSFFont red = bold();
        red.setColor(new XSSFColor(WARNING));
        warning.setFont(red);
    }

    private CellStyle style() {
        CellStyle style = book.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setWrapText(true);
        style.setBorderBottom(BorderStyle.HAIR);
        return style;
    }

    private CellStyle headStyle() {
        CellStyle style = style();
        style.setFont(bold());
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderBottom(BorderStyle.MEDIUM);
        return style;
    }

    /** At the right, and apart from the text of the next column. */
    private static CellStyle right(CellStyle style) {
        style.setAlignment(HorizontalAlignment.RIGHT);
        style.setIndention((short) 1);
        return style;
    }

    private static CellStyle quoted(CellStyle style) {
        style.setQuotePrefixed(true);
        return style;
    }

    /** Programs that do not look at the text itself put its full stop at the wrong end otherwise. */
    private static CellStyle fromTheRight(CellStyle style) {
        ((XSSFCellStyle) style).setReadingOrder(ReadingOrder.RIGHT_TO_LEFT);
        return style;
    }

    private XSSFFont bold() {
        XSSFFont font = (XSSFFont) book.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(POINTS);
        font.setBold(true);
        return font;
    }

    CellStyle head() {
        return head;
    }

    CellStyle numberHead() {
        return numberHead;
    }

    /**
     * Of a text.
     *
     * @param formula      whether a spreadsheet would take it for a formula
     * @param fromTheRight whether it is read from right to left
     */
    CellStyle text(boolean formula, boolean fromTheRight) {
        return fromTheRight ? formula ? quotedFromTheRight : textFromTheRight : formula ? quoted : text;
    }

    CellStyle number() {
        return number;
    }

    CellStyle date() {
        return date;
    }

    CellStyle warning() {
        return warning;
    }
}

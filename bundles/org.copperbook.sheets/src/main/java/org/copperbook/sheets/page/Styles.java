package org.copperbook.sheets.page;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.ReadingOrder;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook, each made once: a workbook may hold only so many. */
final class Styles {

    static final String FONT = "Arial";

    /** Height of a line of text of the base size, points. */
    static final float LINE = 13f;

    private static final Set<Look> BOLD = EnumSet.of(Look.TITLE, Look.HEADING, Look.STRONG, Look.TABLE_HEAD,
            Look.TABLE_STRONG, Look.TOTAL, Look.WARNING);
    private static final Set<Look> RULED = EnumSet.of(Look.TABLE_HEAD, Look.TABLE_CELL, Look.TABLE_STRONG);

    private record Key(Look look, String format, HorizontalAlignment align, boolean quoted, boolean fromTheRight) {
    }

    private final XSSFWorkbook workbook;
    private final Map<Key, XSSFCellStyle> made = new HashMap<>();
    private final Map<Look, XSSFFont> fonts = new HashMap<>();

    Styles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        XSSFFont base = workbook.getFontAt(0);
        base.setFontName(FONT);
        base.setFontHeightInPoints((short) 10);
    }

    static boolean bold(Look look) {
        return BOLD.contains(look);
    }

    static float lineHeight(Look look) {
        return switch (look) {
            case TITLE -> 21f;
            case HEADING -> 17f;
            default -> LINE;
        };
    }

    /**
     * @param format       number format, or "" for text
     * @param quoted       true to keep a text that begins like a formula text for good
     * @param fromTheRight true for a text that is read from right to left; programs that do not look at the text itself put
     *                     its full stop at the wrong end otherwise
     */
    XSSFCellStyle of(Look look, String format, HorizontalAlignment align, boolean quoted, boolean fromTheRight) {
        return made.computeIfAbsent(new Key(look, format, align, quoted, fromTheRight), this::make);
    }

    private XSSFCellStyle make(Key key) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(fonts.computeIfAbsent(key.look(), this::font));
        style.setAlignment(key.align());
        style.setVerticalAlignment(key.look() == Look.TABLE_HEAD || key.look() == Look.WRITE_HERE
                ? VerticalAlignment.BOTTOM : VerticalAlignment.CENTER);
        style.setWrapText(key.format().isEmpty());
        style.setQuotePrefixed(key.quoted());
        if (key.fromTheRight()) {
            style.setReadingOrder(ReadingOrder.RIGHT_TO_LEFT);
        }
        if (!key.format().isEmpty()) {
            style.setDataFormat(workbook.createDataFormat().getFormat(key.format()));
        }
        rules(style, key.look());
        return style;
    }

    private static void rules(XSSFCellStyle style, Look look) {
        if (RULED.contains(look)) {
            style.setBorderBottom(look == Look.TABLE_HEAD ? BorderStyle.MEDIUM : BorderStyle.HAIR);
        }
        if (look == Look.TABLE_HEAD) {
            style.setBorderTop(BorderStyle.THIN);
        }
        if (look == Look.TOTAL) {
            style.setBorderTop(BorderStyle.THIN);
            style.setBorderBottom(BorderStyle.DOUBLE);
        }
        if (look == Look.WRITE_HERE) {
            style.setBorderBottom(BorderStyle.THIN);
        }
        if (look == Look.HEADING) {
            style.setBorderBottom(BorderStyle.THIN);
        }
        if (look == Look.WARNING) {
            style.setBorderBottom(BorderStyle.MEDIUM);
            style.setBorderTop(BorderStyle.MEDIUM);
            style.setBorderLeft(BorderStyle.MEDIUM);
            style.setBorderRight(BorderStyle.MEDIUM);
        }
    }

    private XSSFFont font(Look look) {
        XSSFFont font = workbook.createFont();
        font.setFontName(FONT);
        font.setBold(bold(look));
        font.setItalic(look == Look.NOTE);
        font.setFontHeightInPoints((short) switch (look) {
            case TITLE -> 16;
            case HEADING -> 12;
            default -> 10;
        });
        return font;
    }
}

package org.copperbook.sheets.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * One sheet, written from the top down on an A4 page. Every text is wrapped and its row made high enough, because
 * spreadsheets do neither for joined cells; a text higher than a row may be goes on in the next row.
 */
public final class SheetPage {

    /** A row may be 409 points high. */
    private static final int MOST_LINES = 30;

    /** Room between text and rules, points. */
    private static final float PADDING = 3.5f;

    /** Room for rows on an A4 page inside the margins, upright and turned, points. */
    private static final float HIGH = 726f;
    private static final float TURNED_HIGH = 480f;

    private final XSSFSheet sheet;
    private final Styles styles;
    private final int[] widths;
    private final float room;
    private float left;
    private float repeated;
    private int next;

    SheetPage(XSSFSheet sheet, Styles styles, Letterhead head, boolean landscape, int... widths) {
        this.sheet = sheet;
        this.styles = styles;
        this.widths = widths.clone();
        for (int i = 0; i < widths.length; i++) {
            sheet.setColumnWidth(i, widths[i] * 256);
        }
        float wide = (float) Arrays.stream(widths).sum() * PrintedPage.DIGIT;
        float scale = Math.min(1, (landscape ? PrintedPage.TURNED_WIDE : PrintedPage.WIDE) / wide);
        this.room = (landscape ? TURNED_HIGH : HIGH) / scale;
        this.left = room;
        printOn(head, landscape);
    }

    /**
     * Begins a new page when what follows would not fit on the rest of this one.
     *
     * @param rows rows of one line that must stay together
     */
    public void keepTogether(int rows) {
        if (rows * (Styles.LINE + PADDING) > left - 0.03f * room && left < room - repeated) {
            pageBreak();
        }
    }

    private void printOn(Letterhead head, boolean landscape) {
        PrintedPage.set(sheet, head, landscape);
        PrintedPage.fitWidth(sheet);
        sheet.setHorizontallyCenter(true);
        sheet.setDisplayGridlines(false);
    }

    /** The sheet itself, for drawings and names. */
    public XSSFSheet sheet() {
        return sheet;
    }

    /** Index of the row that comes next, from 0. */
    public int nextRow() {
        return next;
    }

    /** Columns of the page. */
    public int columns() {
        return widths.length;
    }

    public void gap() {
        sheet.createRow(next++).setHeightInPoints(8f);
        took(8f);
    }

    /** An empty row of a height, for a drawing; gives its index. */
    int blank(float points) {
        sheet.createRow(next).setHeightInPoints(Math.min(points, 409f));
        took(Math.min(points, 409f));
        return next++;
    }

    public void title(String text) {
        line(Look.TITLE, text);
    }

    public void heading(String text) {
        keepTogether(6);
        gap();
        line(Look.HEADING, text);
    }

    /** Text over the whole width, in as many rows as it takes; blank text writes nothing. */
    public void paragraph(String text) {
        line(Look.TEXT, text);
    }

    public void note(String text) {
        line(Look.NOTE, text);
    }

    public void warning(String text) {
        line(Look.WARNING, text);
        gap();
    }

    private void line(Look look, String text) {
        if (text != null && !text.isBlank()) {
            row(look, Entry.text(text.strip()).over(widths.length));
        }
    }

    /** A label over the first columns and what belongs to it over the rest; nothing when there is nothing to say. */
    public void pair(int labelColumns, String label, Entry value) {
        if (!(value.content() instanceof Entry.Blank)) {
            Entry said = new Entry(value.content(), value.look(), widths.length - labelColumns,
                    value.align() == HorizontalAlignment.RIGHT ? HorizontalAlignment.LEFT : value.align());
            row(Look.TEXT, Entry.text(label).looks(Look.LABEL).over(labelColumns), said);
        }
    }

    public void pair(int labelColumns, String label, String value) {
        pair(labelColumns, label, Entry.text(value));
    }

    /** Names the last {@code rows} rows written as those that are printed again on top of every further page. */
    public void repeat(int rows) {
        sheet.setRepeatingRows(CellRangeAddress.valueOf((next - rows + 1) + ":" + next));
        repeated = 0;
        for (int i = next - rows; i < next; i++) {
            repeated += sheet.getRow(i).getHeightInPoints();
        }
    }

    /** The last rows written stay in sight while the sheet is scrolled. */
    public void freeze() {
        sheet.createFreezePane(0, next);
    }

    public void pageBreak() {
        if (next > 0) {
            sheet.setRowBreak(next - 1);
            left = room - repeated;
        }
    }

    public int row(Look look, Entry... entries) {
        return row(look, Arrays.asList(entries));
    }

    /**
     * Writes one row (or more, when a text is too long for one).
     *
     * @return index of the first row written
     */
    public int row(Look look, List<Entry> entries) {
        int first = next;
        List<List<String>> chunks = new ArrayList<>();
        int rows = 1;
        int column = 0;
        for (Entry e : entries) {
            List<String> own = e.content() instanceof Entry.Text t ? chunks(t.text(), width(column, e.span()), lookOf(look, e))
                    : List.of();
            chunks.add(own);
            rows = Math.max(rows, own.size());
            column += e.span();
        }
        if (column > widths.length) {
            throw new IllegalArgumentException("a row of " + column + " columns on a page of " + widths.length);
        }
        for (int i = 0; i < rows; i++) {
            rowOf(look, entries, chunks, i);
        }
        return first;
    }

    private void rowOf(Look look, List<Entry> entries, List<List<String>> chunks, int part) {
        XSSFRow row = sheet.createRow(next++);
        float height = Styles.lineHeight(look) + PADDING;
        int column = 0;
        for (int i = 0; i < entries.size(); i++) {
            Entry e = entries.get(i);
            Look own = lookOf(look, e);
            Entry.Content content = e.content();
            if (content instanceof Entry.Text) {
                String text = part < chunks.get(i).size() ? chunks.get(i).get(part) : "";
                content = text.isEmpty() ? new Entry.Blank() : new Entry.Text(text);
                int lines = TextMeasure.lines(text, scaled(width(column, e.span()), own), Styles.bold(own)).size();
                height = Math.max(height, lines * Styles.lineHeight(own) + PADDING);
            } else if (part > 0) {
                content = new Entry.Blank();
            }
            put(row, column, e, own, content);
            column += e.span();
        }
        row.setHeightInPoints(Math.min(height, 409f));
        took(Math.min(height, 409f));
    }

    /** Keeps count of the room on the page: what does not fit goes to the next by itself. */
    private void took(float height) {
        left = height > left ? room - repeated - height : left - height;
    }

    private void put(XSSFRow row, int column, Entry e, Look look, Entry.Content content) {
        String format = content instanceof Entry.Number n ? n.format()
                : content instanceof Entry.Formula f ? f.format()
                : content instanceof Entry.Day ? "yyyy\\-mm\\-dd" : "";
        boolean quoted = content instanceof Entry.Text t && CellText.looksLikeFormula(t.text());
        boolean fromTheRight = content instanceof Entry.Text t && CellText.isFromTheRight(t.text());
        XSSFCellStyle style = styles.of(look, format, e.align(), quoted, fromTheRight);
        XSSFCell cell = row.createCell(column);
        cell.setCellStyle(style);
        for (int c = column + 1; c < column + e.span(); c++) {
            row.createCell(c).setCellStyle(style);
        }
        if (e.span() > 1) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row.getRowNum(), row.getRowNum(), column,
                    column + e.span() - 1));
        }
        if (content instanceof Entry.Text t) {
            cell.setCellValue(CellText.storable(t.text()));
        } else if (content instanceof Entry.Number n) {
            cell.setCellValue(n.value());
        } else if (content instanceof Entry.Day d) {
            cell.setCellValue(d.day());
        } else if (content instanceof Entry.Formula f) {
            cell.setCellFormula(f.formula());
        }
    }

    private static Look lookOf(Look row, Entry e) {
        return e.look() == null ? row : e.look();
    }

    private double width(int column, int span) {
        double sum = 0;
        for (int i = column; i < Math.min(column + span, widths.length); i++) {
            sum += widths[i];
        }
        return sum;
    }

    /** Room in digits of the look's own size. */
    private static double scaled(double width, Look look) {
        return switch (look) {
            case TITLE -> width * 10 / 16;
            case HEADING -> width * 10 / 12;
            default -> width;
        };
    }

    private static List<String> chunks(String text, double width, Look look) {
        List<String> lines = TextMeasure.lines(text, scaled(width, look), Styles.bold(look));
        if (lines.size() <= MOST_LINES && text.length() <= CellText.LONGEST) {
            return List.of(text);
        }
        List<String> chunks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += MOST_LINES) {
            chunks.add(String.join("\n", lines.subList(i, Math.min(i + MOST_LINES, lines.size()))));
        }
        return chunks;
    }
}

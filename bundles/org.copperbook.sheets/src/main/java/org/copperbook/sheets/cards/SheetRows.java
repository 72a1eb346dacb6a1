package org.copperbook.sheets.cards;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The rows of a sheet while it streams by. Numbers come as they are kept and not as they are shown, so that no digit is
 * lost to a cell's format; of a formula the kept result counts.
 */
final class SheetRows extends DefaultHandler {

    /** The receiver asked for no more rows. */
    static final class Enough extends SAXException {
        private static final long serialVersionUID = 1L;
    }

    /** The sheet is refused. */
    static final class Refused extends SAXException {
        private static final long serialVersionUID = 1L;
        private final transient UnreadableTableException reason;

        Refused(UnreadableTableException reason) {
            super(reason);
            this.reason = reason;
        }

        UnreadableTableException reason() {
            return reason;
        }
    }

    private final SharedStrings texts;
    private final StylesTable styles;
    private final boolean from1904;
    private final CardTable.Rows to;
    private final List<TableCell> cells = new ArrayList<>();
    private final StringBuilder value = new StringBuilder();
    private boolean collecting;
    private boolean formula;
    private boolean valued;
    private String type = "n";
    private int style;
    private int column = -1;
    private int rowNumber;
    private int seen;
    private int formulas;
    private int merged;

    SheetRows(SharedStrings texts, StylesTable styles, boolean from1904, CardTable.Rows to) {
        this.texts = texts;
        this.styles = styles;
        this.from1904 = from1904;
        this.to = to;
    }

    /** What is to be said of the sheet as a whole. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (formulas > 0) {
            remarks.add(CardWords.say("book.formulas", formulas));
        }
        if (merged > 0) {
            remarks.add(CardWords.say("book.merged", merged));
        }
        return remarks;
    }

    @Override
    public void startElement(String uri, String local, String name, Attributes a) throws SAXException {
        switch (local) {
            case "row" -> {
                String r = a.getValue("r");
                rowNumber = r == null ? rowNumber + 1 : Integer.parseInt(r);
                cells.clear();
                column = -1;
            }
            case "c" -> cell(a);
            case "v" -> {
                collecting = true;
                valued = true;
                value.setLength(0);
            }
            case "t" -> collecting = "inlineStr".equals(type);
            case "f" -> formula = true;
            case "mergeCell" -> merged++;
            default -> {
                return;
            }
        }
    }

    private void cell(Attributes a) throws SAXException {
        String r = a.getValue("r");
        column = r == null ? column + 1 : new CellReference(r).getCol();
        if (column >= TableLimits.COLUMNS) {
            throw refused("file.columns", rowNumber, TableLimits.COLUMNS);
        }
        type = a.getValue("t") == null ? "n" : a.getValue("t");
        style = a.getValue("s") == null ? -1 : Integer.parseInt(a.getValue("s"));
        value.setLength(0);
        formula = false;
        valued = false;
    }

    @Override
    public void characters(char[] text, int from, int length) throws SAXException {
        if (collecting) {
            if (value.length() + length > TableLimits.CELL) {
                throw refused("file.cell", rowNumber, TableLimits.CELL);
            }
            value.append(text, from, length);
        }
    }

    @Override
    public void endElement(String uri, String local, String name) throws SAXException {
        switch (local) {
            case "v", "t" -> collecting = false;
            case "c" -> {
                while (cells.size() < column) {
                    cells.add(TableCell.EMPTY);
                }
                if (cells.size() == column) {
                    cells.add(content());
                }
                formulas += formula ? 1 : 0;
            }
            case "row" -> row();
            default -> {
                return;
            }
        }
    }

    private void row() throws SAXException {
        TableRow row = new TableRow(rowNumber, cells);
        if (row.isBlank()) {
            return;
        }
        if (++seen > TableLimits.ROWS) {
            throw refused("file.rows", TableLimits.ROWS);
        }
        try {
            if (!to.take(row)) {
                throw new Enough();
            }
        } catch (UnreadableTableException e) {
            throw new Refused(e);
        }
    }

    private TableCell content() {
        String text = value.toString();
        return switch (type) {
            case "s" -> TableCell.text(shared(text));
            case "inlineStr", "str" -> formula && !valued ? broken("cell.no-result")
                    : TableCell.text(unescaped(text).strip());
            case "b" -> TableCell.text("1".equals(text) ? "true" : "false");
            case "e" -> new TableCell(CardWords.say("cell.error", text), TableCell.Kind.BROKEN);
            case "d" -> new TableCell(text.length() > 10 ? text.substring(0, 10) : text, TableCell.Kind.DATE);
            default -> number(text);
        };
    }

    /** The text behind escapes like _x000D_ (ECMA-376 part 1, 22.9.2.19). */
    private static String unescaped(String text) {
        return text.contains("_x") ? new XSSFRichTextString(text).getString() : text;
    }

    private TableCell number(String text) {
        if (text.isBlank()) {
            return formula ? broken("cell.no-result") : TableCell.EMPTY;
        }
        double d;
        try {
            d = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return new TableCell(CardWords.say("cell.error", text), TableCell.Kind.BROKEN);
        }
        if (isDate() && DateUtil.isValidExcelDate(d)) {
            LocalDateTime date = DateUtil.getLocalDateTime(d, from1904);
            return new TableCell(date.toLocalDate().toString(), TableCell.Kind.DATE);
        }
        // 15 digits: what a spreadsheet keeps as 0.30000000000000004 was typed as 0.3
        return new TableCell(new BigDecimal(d).round(new MathContext(15)).stripTrailingZeros().toPlainString(),
                TableCell.Kind.NUMBER);
    }

    private boolean isDate() {
        if (style < 0 || styles == null || style >= styles.getNumCellStyles()) {
            return false;
        }
        XSSFCellStyle s = styles.getStyleAt(style);
        String format = s.getDataFormatString();
        return format != null && DateUtil.isADateFormat(s.getDataFormat(), format);
    }

    private static TableCell broken(String key) {
        return new TableCell(CardWords.text(key), TableCell.Kind.BROKEN);
    }

    private String shared(String index) {
        try {
            return texts == null ? "" : texts.getItemAt(Integer.parseInt(index.strip())).getString().strip();
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            return "";
        }
    }

    private static Refused refused(String key, Object... args) {
        return new Refused(new UnreadableTableException(CardWords.say(key, args)));
    }
}

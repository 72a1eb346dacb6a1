package org.copperbook.sheets.template;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.sheets.page.CellText;
import org.copperbook.sheets.template.UnusableTemplate.Why;

/**
 * The named cells of a workbook. Filling one leaves its look as it is; a text that a spreadsheet could take for a formula is
 * marked as text, as in the quote that ships.
 */
final class NamedCells {

    private static final int LONGEST = 32_000;

    private final XSSFWorkbook workbook;
    private final Map<String, AreaReference> places = new HashMap<>();
    private final List<String> others = new ArrayList<>();
    private final Map<Short, CellStyle> marked = new HashMap<>();

    /**
     * Finds the names that are asked for.
     *
     * @param isKnown whether a name, in lower case, is one to be filled
     * @throws UnusableTemplate when one of them leads nowhere
     */
    NamedCells(XSSFWorkbook workbook, java.util.function.Predicate<String> isKnown) throws UnusableTemplate {
        this.workbook = workbook;
        for (XSSFName name : workbook.getAllNames()) {
            String plain = name.getNameName().toLowerCase(Locale.ROOT);
            if (isKnown.test(plain)) {
                places.put(plain, place(name));
            } else {
                others.add(name.getNameName());
            }
        }
    }

    private AreaReference place(XSSFName name) throws UnusableTemplate {
        try {
            AreaReference area = new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
            if (area.getFirstCell().getSheetName() == null || workbook.getSheet(area.getFirstCell().getSheetName()) == null
                    || area.getFirstCell().getRow() < 0 || area.getFirstCell().getCol() < 0) {
                throw new UnusableTemplate(Why.BROKEN_NAME, null, name.getNameName());
            }
            return area;
        } catch (RuntimeException notACell) {
            throw new UnusableTemplate(Why.BROKEN_NAME, notACell, name.getNameName());
        }
    }

    boolean isEmpty() {
        return places.isEmpty();
    }

    /** Names that were not asked for, as the workbook writes them. */
    List<String> others() {
        return List.copyOf(others);
    }

    /** Where a name leads; empty when the workbook does not have it. */
    Optional<AreaReference> place(String name) {
        return Optional.ofNullable(places.get(name));
    }

    /**
     * Refuses cells that compute, which could not be filled.
     *
     * @param rows a name that is not filled itself
     */
    void refuseFormulas(String rows) throws UnusableTemplate {
        for (Map.Entry<String, AreaReference> e : places.entrySet()) {
            CellReference at = e.getValue().getFirstCell();
            XSSFRow row = sheet(e.getValue()).getRow(at.getRow());
            XSSFCell cell = row == null ? null : row.getCell(at.getCol());
            if (!e.getKey().equals(rows) && cell != null && cell.getCellType() == CellType.FORMULA) {
                throw new UnusableTemplate(Why.FORMULA, null, e.getKey(), cell.getAddress().formatAsString());
            }
        }
    }

    XSSFSheet sheet(AreaReference area) {
        return workbook.getSheet(area.getFirstCell().getSheetName());
    }

    /** Fills the cell of a name, if there is one. */
    void put(String name, Object value) throws UnusableTemplate {
        AreaReference area = places.get(name);
        if (area != null) {
            CellReference at = area.getFirstCell();
            put(cell(sheet(area), at.getRow(), at.getCol()), name, value);
        }
    }

    /** Fills a cell; null empties it. A cell that computes is the template's own and is not overwritten. */
    void put(Cell cell, String name, Object value) throws UnusableTemplate {
        if (cell.getCellType() == CellType.FORMULA) {
            throw new UnusableTemplate(Why.FORMULA, null, name, cell.getAddress().formatAsString());
        }
        // A text that is kept in the cell itself would stay there beside what is put in.
        cell.setBlank();
        if (value == null) {
            return;
        }
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
            if (!DateUtil.isCellDateFormatted(cell)) {
                cell.setCellValue(day.toString());
            }
        } else {
            String text = CellText.storable(value.toString());
            if (text.length() > LONGEST) {
                throw new UnusableTemplate(Why.TOO_LONG, null, name, LONGEST);
            }
            cell.setCellValue(text);
            if (CellText.looksLikeFormula(text)) {
                cell.setCellStyle(kept(cell.getCellStyle()));
            }
        }
    }

    /** The look of a cell with the mark that keeps its text a text when somebody edits it; one for each look. */
    private CellStyle kept(CellStyle plain) {
        return marked.computeIfAbsent(plain.getIndex(), i -> {
            CellStyle style = workbook.createCellStyle();
            style.cloneStyleFrom(plain);
            style.setQuotePrefixed(true);
            return style;
        });
    }

    static Cell cell(XSSFSheet sheet, int row, int column) {
        Row at = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        return at.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }
}

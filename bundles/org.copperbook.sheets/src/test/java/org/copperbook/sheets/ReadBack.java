package org.copperbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A written workbook read again; results are computed from the formulas, never taken from what was stored. */
final class ReadBack implements AutoCloseable {

    private final XSSFWorkbook workbook;
    private final FormulaEvaluator evaluator;

    ReadBack(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            workbook = new XSSFWorkbook(in);
        }
        evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    Cell named(String name) {
        CellReference at = new AreaReference(workbook.getName(name).getRefersToFormula(),
                workbook.getSpreadsheetVersion()).getFirstCell();
        return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    }

    /** The result behind a name with the digits of a currency; fails when it is not within noise of them. */
    BigDecimal money(String name, int digits) {
        evaluator.clearAllCachedResultValues();
        double value = evaluator.evaluate(named(name)).getNumberValue();
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, java.math.RoundingMode.HALF_EVEN);
        if (Math.abs(rounded.doubleValue() - value) > 1e-9 * Math.max(1, Math.abs(value))) {
            throw new AssertionError(name + " is not rounded: " + value);
        }
        return rounded;
    }

    /** Every formula's result as text, with errors as they are. */
    List<String> formulaResults() {
        evaluator.clearAllCachedResultValues();
        List<String> results = new ArrayList<>();
        for (Cell c : cells()) {
            if (c.getCellType() == CellType.FORMULA) {
                CellValue v = evaluator.evaluate(c);
                results.add(v.formatAsString());
            }
        }
        return results;
    }

    List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        for (Sheet s : workbook) {
            for (Row r : s) {
                r.forEach(cells::add);
            }
        }
        return cells;
    }

    List<String> texts() {
        return cells().stream().filter(c -> c.getCellType() == CellType.STRING).map(Cell::getStringCellValue).toList();
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }
}

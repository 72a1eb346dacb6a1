package org.copperbook.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** All the text of a workbook as a reader would see it, its formulas computed anew. */
final class WorkbookText {

    private WorkbookText() {
    }

    static String of(Path file) {
        StringBuilder text = new StringBuilder();
        DataFormatter shown = new DataFormatter();
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook book = new XSSFWorkbook(in)) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (Sheet sheet : book) {
                text.append("# ").append(sheet.getSheetName()).append('\n');
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.ERROR
                                || evaluator.evaluateFormulaCell(cell) == CellType.ERROR) {
                            throw new AssertionError(sheet.getSheetName() + "!" + cell.getAddress() + " is an error");
                        }
                        text.append(shown.formatCellValue(cell, evaluator)).append('\t');
                    }
                    text.append('\n');
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
        return text.toString();
    }
}

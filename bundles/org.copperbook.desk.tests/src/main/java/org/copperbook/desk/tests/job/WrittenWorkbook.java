package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;

/** A workbook that a command of the window wrote, read again with its formulas evaluated anew. */
final class WrittenWorkbook {

    private static final double CENT = 0.004;

    private final Path file;
    private final List<String> texts = new ArrayList<>();
    private final List<Double> results = new ArrayList<>();

    private WrittenWorkbook(Path file) throws IOException {
        this.file = file;
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook book = new XSSFWorkbook(in)) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            evaluator.clearAllCachedResultValues();
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    row.forEach(cell -> read(cell, evaluator));
                }
            }
        }
    }

    /** Carries the command out and waits for the file it writes. */
    static WrittenWorkbook by(Desktop desktop, JobEditor editor, String command) throws Exception {
        Map<Path, FileTime> before = files();
        desktop.command(command);
        List<Path> written = new ArrayList<>();
        desktop.until(command + " has written its file for " + editor.document().number(), () -> {
            files().forEach((path, time) -> {
                if (!time.equals(before.get(path)) && path.getFileName().toString().contains(editor.document().number())
                        && path.toString().endsWith(".xlsx") && !written.contains(path)) {
                    written.add(path);
                }
            });
            return !written.isEmpty();
        });
        desktop.until("the window says so", () -> desktop.shows("written/open"));
        desktop.press("written/close");
        return new WrittenWorkbook(written.get(0));
    }

    /** A text stands somewhere, alone or inside a longer one. */
    void says(String text) {
        if (texts.stream().noneMatch(t -> t.contains(text))) {
            fail("\"" + text + "\" is not in " + file + ": " + texts);
        }
    }

    /** A formula comes out at an amount, to the cent. */
    void computes(double amount) {
        assertTrue(results.stream().anyMatch(r -> Math.abs(r - amount) < CENT),
                amount + " is not computed in " + file + ": " + results);
    }

    private void read(Cell cell, FormulaEvaluator evaluator) {
        if (cell.getCellType() == CellType.STRING) {
            texts.add(cell.getStringCellValue());
        } else if (cell.getCellType() == CellType.FORMULA) {
            var value = evaluator.evaluate(cell);
            Consumer<String> text = texts::add;
            switch (value.getCellType()) {
                case NUMERIC -> results.add(value.getNumberValue());
                case STRING -> text.accept(value.getStringValue());
                case ERROR -> fail(file + " " + cell.getSheet().getSheetName() + "!" + cell.getAddress() + ": "
                        + cell.getCellFormula() + " is an error");
                default -> {
                }
            }
        }
    }

    private static Map<Path, FileTime> files() {
        Map<Path, FileTime> found = new HashMap<>();
        Path folder = WorkbookFolder.current();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path f : files.toList()) {
                    found.put(f, Files.getLastModifiedTime(f));
                }
            } catch (IOException replacedMeanwhile) {
                return found;
            }
        }
        return found;
    }
}

package org.copperbook.sheets.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Date;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.ss.util.CellReference;
import org.copperbook.sheets.WorkbookNotWrittenException;

/** A workbook while it is made. */
public final class Book implements AutoCloseable {

    private static final int LONGEST_NAME = 31;

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Styles styles = new Styles(workbook);
    private final Set<String> names = new HashSet<>();
    private final Letterhead head;

    /**
     * @param head  head and foot of every page
     * @param title title in the file's properties
     */
    public Book(Letterhead head, String title) {
        this.head = head;
        workbook.getProperties().getCoreProperties().setTitle(CellText.storable(title));
        workbook.getProperties().getCoreProperties().setCreator(CellText.storable(head.workshop()));
        workbook.getProperties().getCoreProperties().setCreated(java.util.Optional.of(new Date()));
    }

    /**
     * A new sheet at the end.
     *
     * @param name   wished name; shortened and told apart where spreadsheets ask for it
     * @param widths widths of the columns, in digits of the base font
     */
    public SheetPage portrait(String name, int... widths) {
        return new SheetPage(workbook.createSheet(sheetName(name)), styles, head, false, widths);
    }

    /** As {@link #portrait}, with the page turned. */
    public SheetPage landscape(String name, int... widths) {
        return new SheetPage(workbook.createSheet(sheetName(name)), styles, head, true, widths);
    }

    /** Gives one cell a name of its own, so that people and programs find it. */
    public void name(String name, SheetPage page, int row, int column) {
        XSSFName n = workbook.createName();
        n.setNameName(name);
        n.setRefersToFormula(reference(page, row, column));
    }

    /** A cell of another sheet as a formula names it. */
    public static String reference(SheetPage page, int row, int column) {
        return new CellReference(page.sheet().getSheetName(), row, column, true, true).formatAsString();
    }

    /** The workbook itself. */
    public XSSFWorkbook workbook() {
        return workbook;
    }

    private String sheetName(String wish) {
        String safe = WorkbookUtil.createSafeSheetName(CellText.storable(wish).replace('\n', ' ').strip(), ' ').strip();
        String name = safe;
        for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
            String tail = " (" + i + ")";
            name = safe.substring(0, Math.min(safe.length(), LONGEST_NAME - tail.length())) + tail;
        }
        return name;
    }

    /** Works out every formula, so that viewers which cannot compute show the results too. */
    public void evaluate() {
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        workbook.setForceFormulaRecalculation(true);
    }

    /** Writes the workbook over the target as a whole or not at all. */
    public void writeTo(Path target) throws WorkbookNotWrittenException {
        workbook.setActiveSheet(0);
        new AtomicFile(target).write(workbook::write);
    }

    @Override
    public void close() {
        try {
            workbook.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("a workbook in memory could not be closed", e);
        }
    }
}

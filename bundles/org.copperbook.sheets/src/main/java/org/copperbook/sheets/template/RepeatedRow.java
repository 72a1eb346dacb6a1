package org.copperbook.sheets.template;

import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Repeats one row of a sheet: what stands below it moves down, with formulas, merged cells, names and pictures. */
final class RepeatedRow {

    private RepeatedRow() {
    }

    /**
     * Makes room and copies the row.
     *
     * @param row   the row, from 0
     * @param times how often it is there afterwards, at least once
     */
    static void repeat(XSSFSheet sheet, int row, int times) {
        int more = times - 1;
        if (more < 1) {
            return;
        }
        if (sheet.getLastRowNum() > row) {
            sheet.shiftRows(row + 1, sheet.getLastRowNum(), more, true, false);
        }
        pictures(sheet, row, more);
        XSSFRow from = sheet.getRow(row);
        CellCopyPolicy all = new CellCopyPolicy.Builder().cellValue(true).cellFormula(true).cellStyle(true)
                .rowHeight(hasHeight(from)).mergedRegions(true).build();
        for (int i = 1; i <= more; i++) {
            sheet.createRow(row + i).copyRowFrom(from, all);
        }
    }

    /**
     * Whether the row has a height of its own. Where it has not, copies find theirs too: the height that such a row is said
     * to have is the sheet's, which is 0 in a sheet that states none and would hide them.
     */
    private static boolean hasHeight(XSSFRow row) {
        return row.getHeight() > 0 && row.getHeight() != row.getSheet().getDefaultRowHeight();
    }

    private static void pictures(XSSFSheet sheet, int row, int more) {
        XSSFDrawing drawing = sheet.getDrawingPatriarch();
        if (drawing == null) {
            return;
        }
        for (XSSFShape shape : drawing.getShapes()) {
            if (shape.getAnchor() instanceof ClientAnchor anchor && anchor.getRow1() > row) {
                anchor.setRow1(anchor.getRow1() + more);
                anchor.setRow2(anchor.getRow2() + more);
            }
        }
    }
}

package org.copperbook.sheets.page;

import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;

/** A scene as a picture in a row of its own, as wide as the page allows and in its own proportions. */
public final class SheetPicture {

    private static final double SCALE = 2;
    private static final double PIXELS_PER_POINT = 96.0 / 72;
    private static final int PER_PIXEL = 9_525;

    private SheetPicture() {
    }

    /**
     * Puts a scene below what is written; an empty scene leaves the page as it is.
     *
     * @param tallest greatest height, points
     */
    public static void put(SheetPage page, Scene scene, float tallest) {
        if (scene.isEmpty()) {
            return;
        }
        XSSFSheet sheet = page.sheet();
        double room = 0;
        for (int c = 0; c < page.columns(); c++) {
            room += sheet.getColumnWidthInPixels(c);
        }
        double high = Math.min(tallest * PIXELS_PER_POINT, room * scene.height() / scene.width());
        double wide = high * scene.width() / scene.height();
        int row = page.blank((float) (high / PIXELS_PER_POINT) + 2);
        int column = 0;
        double left = wide;
        while (column < page.columns() - 1 && left > sheet.getColumnWidthInPixels(column)) {
            left -= sheet.getColumnWidthInPixels(column++);
        }
        XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, (int) (left * PER_PIXEL), (int) (high * PER_PIXEL), 0, row,
                column, row);
        anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
        int image = sheet.getWorkbook().addPicture(PngPicture.of(scene, ScenePalette.LIGHT, SCALE),
                Workbook.PICTURE_TYPE_PNG);
        XSSFPicture picture = sheet.createDrawingPatriarch().createPicture(anchor, image);
        picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(scene.title());
    }
}

package org.copperbook.sheets.page;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;

/** The A4 page that every sheet is printed on: margins, and what stands at its head and foot. */
public final class PrintedPage {

    /** Room between the margins of a page that is upright or turned, points. */
    static final float WIDE = 509f;
    static final float TURNED_WIDE = 755f;

    /** Width of a digit of the base font, and so of one unit of a column's width, points. */
    static final float DIGIT = 5.25f;

    private PrintedPage() {
    }

    /** Sets a sheet on its page; how wide it is printed is left to the caller. */
    public static void set(Sheet sheet, Letterhead head, boolean landscape) {
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(landscape);
        sheet.setMargin(PageMargin.LEFT, 0.6);
        sheet.setMargin(PageMargin.RIGHT, 0.6);
        sheet.setMargin(PageMargin.TOP, 0.85);
        sheet.setMargin(PageMargin.BOTTOM, 0.75);
        sheet.setMargin(PageMargin.HEADER, 0.4);
        sheet.setMargin(PageMargin.FOOTER, 0.35);
        sheet.getHeader().setLeft(Letterhead.escaped(head.workshop()));
        sheet.getHeader().setRight(Letterhead.escaped(head.job()));
        sheet.getFooter().setLeft(Letterhead.escaped(head.foot()));
        sheet.getFooter().setRight(head.pageCode());
    }

    /** As wide as one page and as many pages high as it takes. */
    public static void fitWidth(Sheet sheet) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }
}

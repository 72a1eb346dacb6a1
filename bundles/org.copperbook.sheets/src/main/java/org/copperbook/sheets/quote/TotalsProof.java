package org.copperbook.sheets.quote;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.money.CurrencyRule;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.jobs.quote.UnpriceableQuoteException;

/**
 * Proves before a quote leaves that its formulas come to what decimal arithmetic comes to. Spreadsheets count in
 * binary with about 15 digits; amounts beyond that could be a unit off, and such a quote is refused.
 */
public final class TotalsProof {

    private final XSSFWorkbook workbook;
    private final CurrencyRule currency;

    public TotalsProof(XSSFWorkbook workbook, CurrencyRule currency) {
        this.workbook = workbook;
        this.currency = currency;
    }

    /** @throws UnpriceableQuoteException when a total of the workbook differs in the last digit of the currency */
    public void agree(List<QuoteTotals> expected) {
        for (int i = 0; i < expected.size(); i++) {
            QuoteTotals totals = expected.get(i);
            same("before_discount_" + (i + 1), totals.netBeforeDiscount());
            same("discount_" + (i + 1), totals.discount().negate());
            same("net_" + (i + 1), totals.net());
            same("total_" + (i + 1), totals.gross());
        }
    }

    private void same(String name, BigDecimal expected) {
        AreaReference area = new AreaReference(workbook.getName(name).getRefersToFormula(), workbook.getSpreadsheetVersion());
        CellReference at = area.getFirstCell();
        Cell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
        BigDecimal computed = currency.round(new BigDecimal(Double.toString(cell.getNumericCellValue())));
        if (computed.compareTo(expected) != 0) {
            throw UnpriceableQuoteException.beyondSpreadsheets(name + " comes to " + computed.toPlainString()
                    + " in a spreadsheet and to " + expected.toPlainString() + " exactly; the amounts have more digits"
                    + " than a spreadsheet keeps, so split the quote or use fewer decimals");
        }
    }
}

package org.copperbook.sheets.quote;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Words;

/** The sums of one alternative: by tax kind, then over all. */
final class AlternativeTotals {

    private static final int NET = AlternativeSheet.UNIT_PRICE;
    private static final int OFF = AlternativeSheet.DISCOUNT;
    private static final int LAST = AlternativeSheet.AMOUNT;

    private final QuoteContext context;
    private final Book book;
    private final SheetPage page;
    private final int number;
    private final Quote.Alternative alternative;
    private final Map<String, String> taxWords;
    private final Words words;
    private final Map<String, Integer> taxRows = new LinkedHashMap<>();
    private int before;
    private int discount;
    private int net;
    private int tax;
    private int gross;

    AlternativeTotals(QuoteContext context, Book book, SheetPage page, int number, Quote.Alternative alternative,
            Map<String, String> taxWords) {
        this.context = context;
        this.book = book;
        this.page = page;
        this.number = number;
        this.alternative = alternative;
        this.taxWords = taxWords;
        this.words = context.words();
    }

    /**
     * @param first first row of the lines
     * @param last  last row of the lines
     */
    void write(int first, int last) {
        int digits = context.digits();
        BigDecimal percent = alternative.discountPercent() == null ? BigDecimal.ZERO : alternative.discountPercent();
        int percentRow = page.row(Look.TEXT, Entry.text(words.get("total.discountRate")).over(LAST).right(),
                Entry.number(percent, Math.max(0, percent.stripTrailingZeros().scale())));
        page.gap();
        taxTable(first, last, AlternativeSheet.absolute(LAST, percentRow));
        int firstTax = taxRows.values().stream().min(Integer::compare).orElse(page.nextRow());
        int lastTax = page.nextRow() - 1;
        page.gap();
        before = sum("total.before", "ROUND(SUM(" + AlternativeSheet.range(NET, firstTax, lastTax) + ")," + digits + ")");
        discount = sum("total.discount", "-ROUND(SUM(" + AlternativeSheet.range(OFF, firstTax, lastTax) + ")," + digits + ")");
        net = sum("total.net", "ROUND(" + own(before) + "+" + own(discount) + "," + digits + ")");
        tax = sum("total.tax", "ROUND(SUM(" + AlternativeSheet.range(LAST, firstTax, lastTax) + ")," + digits + ")");
        gross = page.row(Look.TOTAL, Entry.text(words.get("total.gross", context.prices().currency().code())).over(LAST)
                .right(), Entry.formula("ROUND(" + own(net) + "+" + own(tax) + "," + digits + ")", digits));
        for (Map.Entry<String, Integer> named : Map.of("before_discount", before, "discount", discount, "net", net,
                "tax", tax, "total", gross).entrySet()) {
            book.name(named.getKey() + "_" + number, page, named.getValue(), LAST);
        }
        control(first, last);
    }

    private void taxTable(int first, int last, String percent) {
        int digits = context.digits();
        page.row(Look.TABLE_HEAD, Entry.text(words.get("column.tax")), Entry.text(words.get("tax.name")),
                Entry.text(words.get("tax.rate")).over(2).right(), Entry.text(words.get("tax.net")).right(),
                Entry.text(words.get("tax.discount")).over(2).right(), Entry.text(words.get("tax.amount")).right());
        for (Map.Entry<String, String> kind : taxWords.entrySet()) {
            int row = page.nextRow();
            String code = AlternativeSheet.absolute(0, row);
            String sum = "SUMIF(" + AlternativeSheet.range(AlternativeSheet.TAX, first, last) + "," + code + ","
                    + AlternativeSheet.range(LAST, first, last) + ")";
            BigDecimal rate = rate(kind.getKey());
            page.row(Look.TABLE_CELL, Entry.text(kind.getValue()), Entry.text(name(kind.getKey())),
                    Entry.number(rate, Math.max(0, rate.stripTrailingZeros().scale())).over(2),
                    Entry.formula("ROUND(" + sum + "," + digits + ")", digits),
                    Entry.formula("ROUND(" + AlternativeSheet.cell(NET, row) + "*" + percent + "/100," + digits + ")",
                            digits).over(2),
                    Entry.formula("ROUND((" + AlternativeSheet.cell(NET, row) + "-" + AlternativeSheet.cell(OFF, row)
                            + ")*" + AlternativeSheet.cell(2, row) + "/100," + digits + ")", digits));
            taxRows.put(kind.getKey(), row);
        }
    }

    /** A line edited to a tax that is not in the table would be left out of the sums: say so. */
    private void control(int first, int last) {
        String codes = "COUNTA(" + AlternativeSheet.range(AlternativeSheet.TAX, first, last) + ")";
        StringBuilder counted = new StringBuilder("0");
        for (int row : taxRows.values()) {
            counted.append("+COUNTIF(").append(AlternativeSheet.range(AlternativeSheet.TAX, first, last)).append(',')
                    .append(AlternativeSheet.absolute(0, row)).append(')');
        }
        String warning = words.get("total.control").replace("\"", "\"\"");
        String check = "IF(" + codes + "=" + counted + ",\"\",\"" + warning + "\")";
        page.row(Look.STRONG, Entry.textFormula(check).over(LAST + 1));
    }

    /** What the workshop earns; {@code costSum} is the formula of the cost of all lines. */
    void costing(String costSum) {
        int digits = context.digits();
        int cost = beside("costing.cost", Entry.formula("ROUND(" + costSum + "," + digits + ")", digits));
        String costCell = AlternativeSheet.absolute(AlternativeSheet.COST_AMOUNT, cost);
        beside("costing.over", Entry.formula("ROUND(" + own(net) + "-" + costCell + "," + digits + ")", digits));
        beside("costing.markUpReached", Entry.formula("IF(" + costCell + "=0,0,ROUND((" + own(net) + "-" + costCell
                + ")/" + costCell + "*100,2))", 2));
        beside("costing.margin", Entry.formula("IF(" + own(net) + "=0,0,ROUND((" + own(net) + "-" + costCell + ")/"
                + own(net) + "*100,2))", 2));
    }

    private int beside(String label, Entry value) {
        return page.row(Look.TEXT, Entry.blank().over(LAST + 1), Entry.blank(),
                Entry.text(words.get(label)).looks(Look.STRONG), value);
    }

    private int sum(String label, String formula) {
        return page.row(Look.STRONG, Entry.text(words.get(label)).over(LAST).right(),
                Entry.formula(formula, context.digits()));
    }

    private static String own(int row) {
        return AlternativeSheet.cell(LAST, row);
    }

    BigDecimal rate(String code) {
        return context.quote().taxes().stream().filter(t -> t.code().equals(code)).findFirst()
                .map(Quote.Tax::ratePercent).orElse(BigDecimal.ZERO);
    }

    private String name(String code) {
        return context.quote().taxes().stream().filter(t -> t.code().equals(code)).findFirst()
                .map(t -> t.name() == null || t.name().isBlank() ? t.code() : t.name())
                .orElse(words.get("tax.none"));
    }

    /** Row of the tax of a kind, by its code. */
    Integer taxRow(String code) {
        return taxRows.get(code);
    }

    int beforeRow() {
        return before;
    }

    int discountRow() {
        return discount;
    }

    int netRow() {
        return net;
    }

    int taxRow() {
        return tax;
    }

    int grossRow() {
        return gross;
    }
}

package org.copperbook.sheets.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellReference;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.WireNamed;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Words;

/** One alternative: its lines by kind with their sums. */
public final class AlternativeSheet {

    static final int DESCRIPTION = 1;
    static final int QUANTITY = 2;
    static final int UNIT_PRICE = 4;
    static final int DISCOUNT = 5;
    static final int TAX = 6;
    static final int AMOUNT = 7;
    static final int COST = 9;
    static final int COST_AMOUNT = 10;

    private final QuoteContext context;
    private final Book book;
    private final int number;
    private final Quote.Alternative alternative;
    private final SheetPage page;
    private final Words words;
    private final Map<String, String> taxWords;
    private final Map<QuoteLine.Kind, Integer> subtotals = new EnumMap<>(QuoteLine.Kind.class);
    private final EffortRows effort;
    private AlternativeTotals totals;
    private int markUpRow;

    /** @param number place of the alternative, from 1 */
    public AlternativeSheet(QuoteContext context, Book book, int number, Quote.Alternative alternative) {
        this.context = context;
        this.book = book;
        this.number = number;
        this.alternative = alternative;
        this.words = context.words();
        this.effort = new EffortRows(new WireNamed(context.job()));
        this.taxWords = context.taxWords();
        int taxWide = Math.max(6, taxWords.values().stream().mapToInt(String::length).max().orElse(0) + 2);
        int money = moneyWide();
        int price = priceWide();
        this.page = context.costing()
                ? book.portrait(label(), taxWide, 36, 9, 8, price, 8, taxWide, money, 4, 14, 16)
                : book.portrait(label(), taxWide, 36, 9, 8, price, 8, taxWide, money);
    }

    private int moneyWide() {
        QuoteTotals totals = context.prices().totals(alternative);
        int longest = Math.max(totals.gross().abs().toPlainString().length(),
                totals.netBeforeDiscount().abs().toPlainString().length());
        return Math.max(14, longest + longest / 3 + 3);
    }

    private int priceWide() {
        int longest = alternative.lines().stream()
                .mapToInt(l -> context.prices().unitPrice(alternative, l).toPlainString().length()).max().orElse(0);
        return Math.max(12, longest + longest / 3 + 2);
    }

    public void write() {
        head();
        List<QuoteLine> lines = alternative.lines();
        int first = page.nextRow();
        int n = 1;
        for (Map.Entry<QuoteLine.Kind, List<QuoteLine>> group : byKind(lines).entrySet()) {
            n = group(group.getKey(), group.getValue(), n);
        }
        int last = Math.max(first, page.nextRow() - 1);
        totals = new AlternativeTotals(context, book, page, number, alternative, taxWords);
        totals.write(first, last);
        wide(Look.NOTE, rule());
        effort.write(book, page, words, number);
        if (context.costing()) {
            int index = page.sheet().getWorkbook().getSheetIndex(page.sheet());
            page.sheet().getWorkbook().setPrintArea(index, 0, AMOUNT, 0, page.nextRow() - 1);
            totals.costing("SUM(" + range(COST_AMOUNT, first, last) + ")");
        }
    }

    private void head() {
        page.title(words.get("alternative.title", Integer.toString(number), name()));
        if (context.demo()) {
            wide(Look.WARNING, words.get("demo.long"));
            page.gap();
        }
        wide(Look.TEXT, context.title());
        wide(Look.TEXT, alternative.note());
        if (context.costing()) {
            markUpRow = page.row(Look.TEXT, Entry.blank().over(AMOUNT + 1), Entry.blank(),
                    Entry.text(words.get(byMargin() ? "costing.marginWanted" : "costing.markUp")).looks(Look.STRONG),
                    percent(byMargin() ? alternative.marginPercent() : alternative.markUpPercent()));
            page.row(Look.NOTE, Entry.blank().over(AMOUNT + 1), Entry.blank(),
                    Entry.text(words.get("costing.notPrinted")).over(2));
        }
        page.gap();
        String currency = context.prices().currency().code();
        List<Entry> titles = new ArrayList<>(List.of(Entry.text(words.get("column.number")),
                Entry.text(words.get("column.description")), Entry.text(words.get("column.quantity")).right(),
                Entry.text(words.get("column.unit")).centred(), Entry.text(words.get("column.unitPrice", currency)).right(),
                Entry.text(words.get("column.discount")).right(), Entry.text(words.get("column.tax")).centred(),
                Entry.text(words.get("column.amount", currency)).right()));
        if (context.costing()) {
            titles.add(Entry.blank().looks(Look.TEXT));
            titles.add(Entry.text(words.get("column.cost", currency)).right());
            titles.add(Entry.text(words.get("column.costAmount", currency)).right());
        }
        page.row(Look.TABLE_HEAD, titles);
        page.repeat(1);
        page.freeze();
    }

    private void wide(Look look, String text) {
        if (text != null && !text.isBlank()) {
            page.row(look, Entry.text(text).over(AMOUNT + 1));
        }
    }

    private static Map<QuoteLine.Kind, List<QuoteLine>> byKind(List<QuoteLine> lines) {
        return lines.stream().collect(Collectors.groupingBy(
                l -> l.kind() == null ? QuoteLine.Kind.OTHER : l.kind(),
                () -> new EnumMap<>(QuoteLine.Kind.class), Collectors.toList()));
    }

    private int group(QuoteLine.Kind kind, List<QuoteLine> lines, int firstNumber) {
        wide(Look.STRONG, words.of(kind));
        int first = page.nextRow();
        int n = firstNumber;
        for (QuoteLine line : lines) {
            effort.at(page.row(Look.TABLE_CELL, entries(line, n++)), line);
        }
        int last = page.nextRow() - 1;
        String sum = "ROUND(SUM(" + range(AMOUNT, first, last) + ")," + context.digits() + ")";
        int row = page.row(Look.TABLE_STRONG, Entry.text(words.get("subtotal", words.of(kind))).over(AMOUNT).right(),
                Entry.formula(sum, context.digits()));
        subtotals.put(kind, row);
        page.gap();
        return n;
    }

    private List<Entry> entries(QuoteLine line, int n) {
        int digits = context.digits();
        int row = page.nextRow();
        int priceDigits = context.prices().unitPriceDigits(line);
        BigDecimal quantity = QuotePrices.quantity(line);
        String product = cell(QUANTITY, row) + "*" + cell(UNIT_PRICE, row) + "*(100-" + cell(DISCOUNT, row) + ")/100";
        String amount = context.quote().rounding() == RoundingRule.LINES ? "ROUND(" + product + "," + digits + ")" : product;
        List<Entry> entries = new ArrayList<>(List.of(Entry.number(n).left(), Entry.text(description(line)),
                Entry.number(quantity, Math.max(0, quantity.stripTrailingZeros().scale())), Entry.text(line.unit()).centred(),
                context.costing()
                        ? Entry.formula("ROUND(" + cell(COST, row) + (byMargin()
                                ? "*100/(100-" + absolute(COST_AMOUNT, markUpRow) + ")"
                                : "*(100+" + absolute(COST_AMOUNT, markUpRow) + ")/100") + "," + priceDigits + ")",
                                priceDigits)
                        : Entry.number(context.prices().unitPrice(alternative, line), priceDigits),
                percent(line.discountPercent()), Entry.text(taxWord(line)).centred(), Entry.formula(amount, digits)));
        if (context.costing()) {
            entries.add(Entry.blank().looks(Look.TEXT));
            entries.add(Entry.number(line.unitPrice(), priceDigits));
            entries.add(Entry.formula(cell(QUANTITY, row) + "*" + cell(COST, row), digits));
        }
        return entries;
    }

    private boolean byMargin() {
        return alternative.marginPercent() != null;
    }

    private String description(QuoteLine line) {
        String text = line.text() == null || line.text().isBlank() ? words.get("line.untitled") : line.text();
        return line.trade() == null || line.trade().isBlank() ? text : text + " (" + line.trade() + ")";
    }

    private String taxWord(QuoteLine line) {
        return taxWords.get(line.tax() == null || line.tax().isBlank() ? "" : line.tax());
    }

    private static Entry percent(BigDecimal percent) {
        return percent == null ? Entry.number(BigDecimal.ZERO, 0)
                : Entry.number(percent, Math.max(0, percent.stripTrailingZeros().scale()));
    }

    private String rule() {
        return words.get(context.quote().rounding() == RoundingRule.LINES ? "rule.lines" : "rule.totals",
                context.prices().currency().code(), Integer.toString(context.digits()));
    }

    /** The sheet. */
    SheetPage page() {
        return page;
    }

    /** Number and name, for titles of sheets and columns. */
    String label() {
        return (number + " " + name()).strip();
    }

    private String name() {
        return alternative.name() == null ? "" : alternative.name();
    }

    /** Row of the subtotal of a kind, or null when the alternative has no such line. */
    Integer subtotalRow(QuoteLine.Kind kind) {
        return subtotals.get(kind);
    }

    AlternativeTotals totals() {
        return totals;
    }

    static String cell(int column, int row) {
        return new CellReference(row, column).formatAsString();
    }

    static String absolute(int column, int row) {
        return new CellReference(row, column, true, true).formatAsString();
    }

    static String range(int column, int first, int last) {
        return absolute(column, first) + ":" + absolute(column, last);
    }
}

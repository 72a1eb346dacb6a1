package org.copperbook.sheets.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.quote.QuoteFigures;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.WireNamed;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Words;

/** Hours of each trade and kilograms of winding wire of one alternative, as sums over its lines. */
final class EffortRows {

    private static final int MOST_ARGUMENTS = 250;
    private static final int LABEL = AlternativeSheet.QUANTITY;

    private final WireNamed named;
    private final Map<String, List<Integer>> hours = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final List<Integer> wire = new ArrayList<>();

    /** @param named knows the winding wire of the job */
    EffortRows(WireNamed named) {
        this.named = named;
    }

    /** Notes where a line stands. */
    void at(int row, QuoteLine line) {
        if (QuoteFigures.isHours(line)) {
            hours.computeIfAbsent(line.trade() == null ? "" : line.trade().strip(), t -> new ArrayList<>()).add(row);
        } else if (named.isKilograms(line)) {
            wire.add(row);
        }
    }

    /** Writes the sums; nothing where there is neither. */
    void write(Book book, SheetPage page, Words words, int number) {
        if (hours.isEmpty() && wire.isEmpty()) {
            return;
        }
        page.gap();
        page.row(Look.STRONG, Entry.text(words.get("effort.heading")).over(AlternativeSheet.AMOUNT + 1));
        int first = page.nextRow();
        hours.forEach((trade, rows) -> sum(page, Look.TABLE_CELL, trade.isEmpty() ? words.get("effort.noTrade")
                : words.get("effort.trade", trade), sum(rows), 2, "h"));
        if (!hours.isEmpty()) {
            int all = sum(page, Look.TABLE_STRONG, words.get("effort.hours"),
                    "SUM(" + AlternativeSheet.range(AlternativeSheet.QUANTITY, first, page.nextRow() - 1) + ")", 2, "h");
            book.name("hours_" + number, page, all, AlternativeSheet.QUANTITY);
        }
        if (!wire.isEmpty()) {
            int all = sum(page, Look.TABLE_STRONG, words.get("effort.wire"), sum(wire), 3, "kg");
            book.name("copper_" + number, page, all, AlternativeSheet.QUANTITY);
        }
    }

    private static int sum(SheetPage page, Look look, String label, String formula, int decimals, String unit) {
        return page.row(look, Entry.text(label).over(LABEL), Entry.formula(formula, decimals), Entry.text(unit).centred());
    }

    /** A sum over rows, neighbours as one range; sums of sums where there are more ranges than a function takes. */
    static String sum(List<Integer> rows) {
        List<String> ranges = new ArrayList<>();
        for (int i = 0; i < rows.size();) {
            int last = i;
            while (last + 1 < rows.size() && rows.get(last + 1) == rows.get(last) + 1) {
                last++;
            }
            String from = AlternativeSheet.cell(AlternativeSheet.QUANTITY, rows.get(i));
            ranges.add(last == i ? from : from + ":" + AlternativeSheet.cell(AlternativeSheet.QUANTITY, rows.get(last)));
            i = last + 1;
        }
        while (ranges.size() > MOST_ARGUMENTS) {
            List<String> sums = new ArrayList<>();
            for (int i = 0; i < ranges.size(); i += MOST_ARGUMENTS) {
                sums.add("SUM(" + String.join(",", ranges.subList(i, Math.min(ranges.size(), i + MOST_ARGUMENTS))) + ")");
            }
            ranges = sums;
        }
        return "SUM(" + String.join(",", ranges) + ")";
    }
}

package org.copperbook.sheets.record;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;

/** Labels and values, two pairs to a row, read down the left half first; what says nothing is left out. */
final class PairsInTwo {

    private record Pair(String label, String value) {
    }

    private final SheetPage page;
    private final RecordContext context;
    private final List<Pair> pairs = new ArrayList<>();

    PairsInTwo(SheetPage page, RecordContext context) {
        this.page = page;
        this.context = context;
    }

    PairsInTwo add(String key, String value) {
        if (value != null && !value.isBlank()) {
            pairs.add(new Pair(context.say(key), value));
        }
        return this;
    }

    void done() {
        int half = (pairs.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            List<Entry> row = new ArrayList<>(entries(pairs.get(i)));
            if (i + half < pairs.size()) {
                row.addAll(entries(pairs.get(i + half)));
            }
            page.row(Look.TEXT, row);
        }
    }

    private static List<Entry> entries(Pair pair) {
        return List.of(Entry.text(pair.label()).over(3), Entry.text(pair.value()).over(3));
    }
}

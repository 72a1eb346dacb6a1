package org.copperbook.sheets.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** A table on a page: columns that each take so many of the page's columns, titles and contents flush left. */
public final class Table {

    private final SheetPage page;
    private final int[] spans;

    public Table(SheetPage page, int... spans) {
        this.page = page;
        this.spans = spans.clone();
    }

    /** The row of column titles; a new page begins first when less than a few rows would fit below. */
    public Table head(String... titles) {
        page.keepTogether(3);
        List<Entry> entries = new ArrayList<>();
        for (String title : titles) {
            entries.add(Entry.text(title));
        }
        page.row(Look.TABLE_HEAD, spanned(entries));
        return this;
    }

    /** One row; returns its index on the page. */
    public int row(Entry... entries) {
        return page.row(Look.TABLE_CELL, spanned(List.of(entries)));
    }

    /** One row of texts. */
    public int texts(String... texts) {
        List<Entry> entries = new ArrayList<>();
        for (String text : texts) {
            entries.add(Entry.text(text));
        }
        return page.row(Look.TABLE_CELL, spanned(entries));
    }

    /** First column on the page that a column of the table takes. */
    public int start(int column) {
        int start = 0;
        for (int i = 0; i < column; i++) {
            start += spans[i];
        }
        return start;
    }

    /** Columns of the page that a column of the table takes. */
    public int span(int column) {
        return spans[column];
    }

    public SheetPage page() {
        return page;
    }

    private List<Entry> spanned(List<Entry> entries) {
        List<Entry> out = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry e = entries.get(i);
            out.add((e.align() == HorizontalAlignment.RIGHT ? e.left() : e).over(spans[i]));
        }
        return out;
    }
}

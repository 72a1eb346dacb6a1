package org.copperbook.sheets.record;

import java.util.Arrays;
import java.util.Optional;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.sheets.bar.BarDrawing;
import org.copperbook.sheets.bar.BarScale;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.SheetPage;

/** A sheet of a record on twelve equal columns, with its heading and interval bars. */
final class Sheet12 {

    static final int COLUMNS = 12;
    private static final int WIDTH = 8;
    private static final int LAST_WIDTH = 11;
    private static final int WIDTH_TURNED = 11;

    private final RecordContext context;
    private final SheetPage page;
    private final Amounts amounts;
    private BarDrawing bars;

    /** An upright sheet; its last column, which carries the word of a verdict, is a little wider. */
    static Sheet12 portrait(RecordContext context, Book book, String name) {
        int[] widths = new int[COLUMNS];
        Arrays.fill(widths, WIDTH);
        widths[COLUMNS - 1] = LAST_WIDTH;
        return new Sheet12(context, name, book.portrait(name, widths));
    }

    /** A turned sheet, for tables with many columns. */
    static Sheet12 landscape(RecordContext context, Book book, String name) {
        int[] widths = new int[COLUMNS];
        Arrays.fill(widths, WIDTH_TURNED);
        return new Sheet12(context, name, book.landscape(name, widths));
    }

    private Sheet12(RecordContext context, String name, SheetPage page) {
        this.context = context;
        this.amounts = new Amounts(context.words());
        this.page = page;
        page.title(context.title() + " – " + name);
        page.repeat(1);
        if (context.demo()) {
            page.warning(context.say("demo.long"));
        }
    }

    SheetPage page() {
        return page;
    }

    Amounts amounts() {
        return amounts;
    }

    /** Draws the bar of a verdict into columns of a row; without a limit there is nothing to hold the value against. */
    void bar(int row, int column, int span, Verdict verdict) {
        if (verdict.bounds() == null || verdict.bounds().isEmpty()) {
            return;
        }
        if (bars == null) {
            bars = new BarDrawing(page.sheet());
        }
        String said = RecordContext.joined(", ", verdict.title(), amounts.valueOf(verdict), context.words().of(verdict.outcome()),
                verdict.limitText());
        bars.draw(row, column, span, BarScale.of(verdict.value(), verdict.expandedU(), verdict.bounds()),
                verdict.outcome(), said);
    }

    void bar(int row, int column, int span, Optional<Verdict> verdict) {
        verdict.ifPresent(v -> bar(row, column, span, v));
    }

    /** The word of a verdict, "" when nothing was judged. */
    String word(Optional<Verdict> verdict) {
        return verdict.map(v -> context.words().of(v.outcome())).orElse("");
    }
}

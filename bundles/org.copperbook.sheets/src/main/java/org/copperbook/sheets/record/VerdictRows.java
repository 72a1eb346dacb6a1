package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** Verdicts in rows: what, value, limit, bar and word; reason and source of the limit under each. */
final class VerdictRows {

    private static final int BAR = 3;

    private final RecordContext c;
    private final Sheet12 sheet;

    VerdictRows(RecordContext context, Sheet12 sheet) {
        this.c = context;
        this.sheet = sheet;
    }

    void write(List<Verdict> verdicts) {
        write(verdicts, false);
    }

    /** @param repeatHead whether the column titles stand on top of every further page */
    void write(List<Verdict> verdicts, boolean repeatHead) {
        if (verdicts.isEmpty()) {
            return;
        }
        sheet.page().gap();
        Table table = new Table(sheet.page(), 4, 2, 3, 2, 1).head(c.say("verdict.what"), c.say("verdict.value"),
                c.say("verdict.limit"), c.say("verdict.bar"), c.say("verdict.word"));
        if (repeatHead) {
            sheet.page().repeat(1);
        }
        for (Verdict v : verdicts) {
            sheet.page().keepTogether(3);
            String title = v.current() ? v.title() : c.say("verdict.earlier", v.title());
            int row = table.row(Entry.text(title), Entry.text(sheet.amounts().valueOf(v)), Entry.text(v.limitText()),
                    Entry.blank(), Entry.text(sheet.word(Optional.of(v))).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(BAR), table.span(BAR), v);
            sheet.page().note(RecordContext.joined(" ", v.reason(),
                    v.source() == null || v.source().isBlank() ? "" : c.say("verdict.sourceOf", v.source()),
                    v.settle() == null || v.settle().isBlank() ? "" : c.say("verdict.settle", v.settle())));
        }
    }
}

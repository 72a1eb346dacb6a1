package org.copperbook.sheets.record;

import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.SinceEarlier;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** A machine that came back: as it left on the earlier job beside as it was found on this one. */
public final class SinceEarlierSheet implements RecordSheet {

    private final Job earlier;

    /** @param earlier the earlier job of the same machine; null when this one does not return from any */
    public SinceEarlierSheet(Job earlier) {
        this.earlier = earlier;
    }

    @Override
    public void write(RecordContext c, Book book) {
        if (earlier == null) {
            return;
        }
        SinceEarlier since = SinceEarlier.of(c.job(), earlier, c.shop());
        Sheet12 sheet = Sheet12.landscape(c, book, c.say("since.sheet"));
        SheetPage page = sheet.page();
        page.paragraph(c.say("since.intro", since.earlier(), Amounts.number(c.shop().workshop().referenceCelsius(), 4)));
        for (WindingRole role : WindingRole.values()) {
            List<SinceEarlier.Row> rows = since.rows().stream().filter(r -> r.role() == role).toList();
            if (!rows.isEmpty()) {
                winding(c, page, role, rows);
            }
        }
        page.heading(c.say("since.changes"));
        if (since.changes().isEmpty()) {
            page.paragraph(c.say("since.unchanged"));
        }
        since.changes().forEach(change -> page.paragraph("• " + change));
    }

    private static void winding(RecordContext c, SheetPage page, WindingRole role, List<SinceEarlier.Row> rows) {
        page.heading(c.words().of(role));
        Table table = new Table(page, 2, 2, 2, 2, 2, 2).head(c.say("comparison.where"), c.say("since.then"),
                c.say("since.thenAt"), c.say("since.today"), c.say("since.todayAt"), c.say("since.change"));
        for (SinceEarlier.Row r : rows) {
            table.row(Entry.text(r.label() + (r.kind() == SinceEarlier.Kind.INSULATION ? c.say("since.at40") : "")),
                    Entry.text(dash(r.then())), Entry.text(c.time(r.thenAt())), Entry.text(dash(r.today())),
                    Entry.text(c.time(r.todayAt())), r.moved() ? Entry.text(r.changeInWords()).looks(Look.TABLE_STRONG)
                            : Entry.text(r.changeInWords()));
        }
    }

    private static String dash(String text) {
        return text.isEmpty() ? "–" : text;
    }
}

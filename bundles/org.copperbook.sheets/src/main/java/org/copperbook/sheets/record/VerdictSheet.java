package org.copperbook.sheets.record;

import org.copperbook.sheets.page.Book;

/** Every verdict, heaviest first, with limit, source and reason. */
public final class VerdictSheet implements RecordSheet {

    @Override
    public void write(RecordContext c, Book book) {
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("verdicts.sheet"));
        sheet.page().note(c.say("cover.bar"));
        if (c.verdicts().all().isEmpty()) {
            sheet.page().paragraph(c.say("verdicts.none"));
        }
        new VerdictRows(c, sheet).write(c.verdicts().byWeight(), true);
    }
}

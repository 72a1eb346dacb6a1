package org.copperbook.sheets.record;

import java.util.stream.Stream;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Table;

/** Signatures, concessions, judgements, reopenings and acknowledged cautions, in the order they happened. */
public final class SignOffSheet implements RecordSheet {

    @Override
    public void write(RecordContext c, Book book) {
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("signoff.sheet"));
        SignOffs s = c.job().signOffs().orElse(null);
        if (s == null) {
            sheet.page().paragraph(c.say("signoff.none"));
            return;
        }
        signatures(c, sheet, s);
        concessions(c, sheet, s);
        judgements(c, sheet, s);
        if (!s.reopenings().isEmpty()) {
            sheet.page().heading(c.say("reopening.heading"));
            Table table = new Table(sheet.page(), 3, 5, 2, 2).head(c.say("hold.point"), c.say("reopening.because"),
                    c.say("signoff.by"), c.say("signoff.at"));
            s.reopenings().forEach(r -> table.texts(c.words().of(r.point()), title(c, r.because()), c.name(r.by()), c.time(r.at())));
        }
        if (!s.cautions().isEmpty()) {
            sheet.page().heading(c.say("acknowledged.heading"));
            Table table = new Table(sheet.page(), 6, 3, 3).head(c.say("acknowledged.step"), c.say("signoff.by"), c.say("signoff.at"));
            s.cautions().forEach(a -> table.texts(step(a.step()), c.name(a.by()), c.time(a.at())));
        }
    }

    /** The step in words, or as recorded when it is not one of the usual steps. */
    private static String step(String recorded) {
        return Stream.of(Hazardous.values()).filter(h -> h.word().equals(recorded)).map(Cautions::title).findFirst()
                .orElse(recorded);
    }

    private static void signatures(RecordContext c, Sheet12 sheet, SignOffs s) {
        sheet.page().heading(c.say("signature.heading"));
        if (s.signatures().isEmpty()) {
            sheet.page().paragraph(c.say("signature.none"));
            return;
        }
        Table table = new Table(sheet.page(), 3, 2, 2, 2, 3).head(c.say("hold.point"), c.say("signoff.by"),
                c.say("signoff.role"), c.say("signoff.at"), c.say("note"));
        s.signatures().forEach(g -> table.texts(c.words().of(g.point()), c.name(g.by()), c.words().of(g.role()),
                c.time(g.at()), g.note()));
    }

    private static void concessions(RecordContext c, Sheet12 sheet, SignOffs s) {
        if (s.concessions().isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("concession.heading"));
        Table table = new Table(sheet.page(), 4, 4, 2, 2).head(c.say("concession.of"), c.say("concession.reason"),
                c.say("signoff.by"), c.say("signoff.at"));
        s.concessions().forEach(x -> table.texts(title(c, x.verdict()), x.reason(),
                RecordContext.joined("\n", c.name(x.by()), c.words().of(x.role())), c.time(x.at())));
    }

    private static void judgements(RecordContext c, Sheet12 sheet, SignOffs s) {
        if (s.judgements().isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("judgement.heading"));
        Table table = new Table(sheet.page(), 3, 2, 3, 2, 2).head(c.say("concession.of"), c.say("judgement.word"),
                c.say("concession.reason"), c.say("signoff.by"), c.say("signoff.at"));
        s.judgements().forEach(j -> table.texts(title(c, j.verdict()), c.say(j.acceptable() ? "judgement.yes" : "judgement.no"),
                j.reason(), RecordContext.joined("\n", c.name(j.by()), c.words().of(j.role())), c.time(j.at())));
    }

    /** The title of a verdict; its id when no such verdict stands any more. */
    private static String title(RecordContext c, String id) {
        return c.verdicts().all().stream().filter(v -> v.id().equals(id)).map(Verdict::title).findFirst().orElse(id);
    }
}

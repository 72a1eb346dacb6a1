package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.process.PolarityTest;
import org.copperbook.jobs.process.ProcessTests;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** The tests of new windings before impregnation; every attempt stands here. */
public final class ProcessSheet implements RecordSheet {

    private static final PartKey PART = PartKey.of(PartKind.IN_PROCESS);
    private static final int LABEL = 4;

    @Override
    public void write(RecordContext c, Book book) {
        ProcessTests tests = c.job().inProcess().orElse(null);
        if (tests == null) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("process.sheet"));
        sheet.page().gap();
        sheet.page().pair(LABEL, c.say("note"), tests.note());
        if (!tests.readings().isEmpty()) {
            sheet.page().heading(c.say("run-up.readings"));
            new ReadingsTable(c, sheet).all(PART, "/readings/", tests.readings());
        }
        SurgeTable.write(c, sheet, PART, tests.surges());
        polarities(c, sheet, tests.polarities());
        List<Verdict> unrecorded = c.verdicts().all().stream()
                .filter(v -> v.part().equals(PART) && v.path().isEmpty()).toList();
        new VerdictRows(c, sheet).write(unrecorded);
    }

    private static void polarities(RecordContext c, Sheet12 sheet, List<PolarityTest> tests) {
        if (tests.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("polarity.heading"));
        Table table = new Table(sheet.page(), 3, 3, 2, 2, 2).head(c.say("withstand.winding"), c.say("polarity.method"),
                c.say("polarity.seen"), c.say("reading.when"), c.say("verdict.word"));
        for (int i = 0; i < tests.size(); i++) {
            PolarityTest t = tests.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(PART, "/polarities/" + i);
            table.row(Entry.text(c.words().of(t.winding())), Entry.text(c.words().of(t.method())), Entry.text(t.seen()),
                    Entry.text(c.whoAndWhen(t.by(), t.at())), Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.page().note(RecordContext.joined("; ", c.instrument(t.instrument()), t.note()));
        }
    }
}

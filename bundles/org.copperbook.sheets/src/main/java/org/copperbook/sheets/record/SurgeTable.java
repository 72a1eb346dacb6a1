package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.runup.SurgeTest;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** Surge comparisons of a part, each with its verdict, instrument and who acknowledged the cautions. */
final class SurgeTable {

    private SurgeTable() {
    }

    static void write(RecordContext c, Sheet12 sheet, PartKey part, List<SurgeTest> tests) {
        if (tests.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("surge.heading"));
        Table table = new Table(sheet.page(), 2, 1, 2, 3, 2, 2).head(c.say("withstand.winding"), c.say("surge.pair"),
                c.say("surge.volts"), c.say("surge.traces"), c.say("reading.when"), c.say("verdict.word"));
        for (int i = 0; i < tests.size(); i++) {
            SurgeTest t = tests.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(part, "/surges/" + i);
            table.row(Entry.text(c.words().of(t.winding())), Entry.text(t.pair()), Entry.text(RecordContext.joined("\n",
                    sheet.amounts().with(t.peakVolts(), "V"), t.levelRule())),
                    Entry.text(t.alike() == null ? c.say("withstand.notDone")
                            : c.say(t.alike() ? "surge.alike" : "surge.different")),
                    Entry.text(c.whoAndWhen(t.by(), t.at())), Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.page().note(RecordContext.joined("; ", c.instrument(t.instrument()),
                    t.cautionsBy() == null ? "" : c.say("cautions.by", c.name(t.cautionsBy())), t.note()));
        }
    }
}

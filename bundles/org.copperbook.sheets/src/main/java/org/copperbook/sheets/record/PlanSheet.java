package org.copperbook.sheets.record;

import java.util.List;
import org.copperbook.jobs.check.PlannedStep;
import org.copperbook.jobs.check.TestPlan;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** The test plan of the run-up: what is tested, in which order, at what level, and where each step stands. */
public final class PlanSheet implements RecordSheet {

    @Override
    public void write(RecordContext c, Book book) {
        if (c.job().runUp().isEmpty()) {
            return;
        }
        List<PlannedStep> steps = TestPlan.of(c.job(), c.shop(), c.verdicts().all());
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("plan.sheet"));
        sheet.page().paragraph(c.say("plan.intro"));
        Table table = new Table(sheet.page(), 4, 3, 3, 2).head(c.say("plan.step"), c.say("plan.level"), c.say("plan.cautions"),
                c.say("plan.state"));
        int n = 1;
        for (PlannedStep s : steps) {
            table.row(Entry.text(RecordContext.joined("\n", n++ + "  " + s.title(), s.why())),
                    Entry.text(RecordContext.joined("\n", s.level(), s.source())), Entry.text(s.cautionTitle().orElse("")),
                    Entry.text(RecordContext.joined("\n", s.stateWord(), s.required() ? "" : c.say("plan.optional")))
                            .looks(Look.TABLE_STRONG));
        }
    }
}

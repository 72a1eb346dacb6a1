package org.copperbook.sheets.record;

import java.util.List;
import org.copperbook.jobs.runup.LogFile;
import org.copperbook.sheets.page.SheetPage;

/** The logger's files from which points were taken: what identifies each, what was taken from it and what was wrong in it. */
final class LogTable {

    private static final int LABEL = 4;

    private LogTable() {
    }

    static void write(RecordContext c, Sheet12 sheet, List<LogFile> logs) {
        SheetPage page = sheet.page();
        for (LogFile log : logs) {
            page.heading(c.say("log.heading", log.name()));
            page.pair(LABEL, c.say("log.hash"), log.hash());
            page.pair(LABEL, c.say("log.rows"), log.rows() == null ? "" : c.say("log.rowsUsed", log.rows(),
                    log.used() == null ? 0L : log.used()));
            page.pair(LABEL, c.say("log.begins"), RecordContext.joined(", ", log.begins(),
                    sheet.amounts().with(log.seconds(), "s")));
            page.pair(LABEL, c.say("log.columns"), String.join("\n", log.columns()));
            page.pair(LABEL, c.say("log.rule"), log.rule());
            page.pair(LABEL, c.say("log.taken"), RecordContext.joined(", ", log.points() == null ? ""
                    : c.say("log.points", log.points()), c.time(log.at()), c.name(log.by())));
            page.pair(LABEL, c.say("log.problems"), log.problems().isEmpty() ? c.say("log.none")
                    : String.join("\n", log.problems()));
        }
    }
}

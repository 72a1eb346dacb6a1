package org.copperbook.sheets.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.faults.FaultFinding;
import org.copperbook.jobs.faults.FaultReport;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** The fault finding: what was told and tried, the suspects with the evidence on each, and the cautions of the tests. */
public final class FaultSheet implements RecordSheet {

    private static final double PERCENT = 100;

    @Override
    public void write(RecordContext c, Book book) {
        FaultFinding told = c.job().part(PartKind.FAULT_FINDING, FaultFinding.class).orElse(null);
        if (told == null) {
            return;
        }
        FaultReport report = FaultReport.of(c.job(), c.shop(), c.verdicts().all());
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("fault.sheet"));
        SheetPage page = sheet.page();
        page.paragraph(c.say("fault.intro", report.origin()));
        report.notes().forEach(page::warning);
        taken(c, page, report);
        suspects(c, page, report);
        if (!report.practice().isEmpty()) {
            page.heading(c.say("fault.practice"));
            page.paragraph(report.practice());
        }
        page.heading(c.say("fault.verdict"));
        page.paragraph(report.verdict().isEmpty() ? c.say("fault.open") : report.verdict());
        if (report.verdict().isEmpty()) {
            report.next().ifPresent(n -> page.note(c.say("fault.next") + ": " + n.question() + " " + n.why()));
        }
        if (told.note() != null && !told.note().isBlank()) {
            page.heading(c.say("note"));
            page.paragraph(told.note());
        }
        cautions(c, page, report);
    }

    private static void taken(RecordContext c, SheetPage page, FaultReport report) {
        page.heading(c.say("fault.taken"));
        if (report.taken().isEmpty()) {
            page.paragraph(c.say("fault.nothing"));
            return;
        }
        Table table = new Table(page, 8, 4).head(c.say("fault.finding"), c.say("fault.from"));
        for (FaultReport.Taken t : report.taken()) {
            table.texts(t.inWords(), t.from().isEmpty() ? c.say("fault.told") : t.from());
        }
    }

    private static void suspects(RecordContext c, SheetPage page, FaultReport report) {
        page.heading(c.say("fault.suspects"));
        Table table = new Table(page, 3, 2, 7).head(c.say("fault.suspect"), c.say("fault.probability"),
                c.say("fault.evidence"));
        for (FaultReport.SuspectLine s : report.suspects()) {
            List<String> lines = new ArrayList<>();
            s.speaksFor().forEach(e -> lines.add(c.say("fault.for", e)));
            s.speaksAgainst().forEach(e -> lines.add(c.say("fault.against", e)));
            table.row(Entry.text(s.inWords()).looks(Look.TABLE_STRONG),
                    Entry.text(c.say("fault.percent", PERCENT * s.probability())),
                    Entry.text(String.join("\n", lines)));
        }
    }

    private static void cautions(RecordContext c, SheetPage page, FaultReport report) {
        Set<String> cautions = new LinkedHashSet<>();
        report.taken().forEach(t -> cautions.addAll(t.cautions()));
        if (report.verdict().isEmpty()) {
            report.next().ifPresent(n -> cautions.addAll(n.cautions()));
        }
        if (!cautions.isEmpty()) {
            page.heading(c.say("fault.cautions"));
            cautions.forEach(caution -> page.paragraph("• " + caution));
        }
    }
}

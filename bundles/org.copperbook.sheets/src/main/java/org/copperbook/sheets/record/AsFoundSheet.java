package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.inspection.BearingFit;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.ExcitationRun;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.inspection.Runout;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.reading.ThreeVolts;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** The machine as found. */
public final class AsFoundSheet implements RecordSheet {

    private static final PartKey PART = PartKey.of(PartKind.INSPECTION);
    private static final int LABEL = 4;

    @Override
    public void write(RecordContext c, Book book) {
        Inspection inspection = c.job().inspection().orElse(null);
        if (inspection == null) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("found.sheet"));
        findings(c, sheet, inspection);
        checklist(c, sheet, inspection.checklist());
        seats(c, sheet, inspection);
        if (!inspection.readings().isEmpty()) {
            sheet.page().heading(c.say("found.readings"));
            new ReadingsTable(c, sheet).all(PART, "/readings/", inspection.readings());
        }
        for (int i = 0; i < inspection.excitationRuns().size(); i++) {
            run(c, sheet, i, inspection.excitationRuns().get(i));
        }
    }

    private static void findings(RecordContext c, Sheet12 sheet, Inspection inspection) {
        SheetPage page = sheet.page();
        if (!inspection.findings().isEmpty()) {
            page.heading(c.say("found.findings"));
            Table table = new Table(page, 2, 2, 4, 4).head(c.say("finding.where"), c.say("finding.severity"),
                    c.say("finding.what"), c.say("finding.work"));
            for (Finding f : inspection.findings()) {
                String photos = f.photos().isEmpty() ? "" : c.say("photos", f.photos().size());
                table.texts(f.where(), c.words().of(f.severity()), RecordContext.joined("; ", f.text(), photos), f.proposedWork());
            }
        }
        if (inspection.recommendedScope() != null && !inspection.recommendedScope().isBlank()) {
            page.heading(c.say("found.scope"));
            page.paragraph(inspection.recommendedScope());
        }
    }

    private static void checklist(RecordContext c, Sheet12 sheet, List<ChecklistItem> items) {
        if (items.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("found.checklist"));
        Table table = new Table(sheet.page(), 2, 3, 2, 5).head(c.say("check.area"), c.say("check.point"),
                c.say("check.condition"), c.say("note"));
        for (ChecklistItem i : items) {
            String photos = i.photos().isEmpty() ? "" : c.say("photos", i.photos().size());
            table.texts(i.area(), i.point(), i.condition() == null ? c.say("check.notLooked") : c.words().of(i.condition()),
                    RecordContext.joined("; ", i.note(), photos));
        }
    }

    /** Bearing seats and runout as measured, and what is judged of them. */
    private static void seats(RecordContext c, Sheet12 sheet, Inspection inspection) {
        if (inspection.fits().isEmpty() && inspection.runouts().isEmpty()) {
            return;
        }
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.heading(c.say("found.seats"));
        Table table = new Table(page, 3, 3, 3, 3).head(c.say("seat.where"), c.say("seat.wanted"), c.say("seat.measured"),
                c.say("seat.with"));
        for (BearingFit f : inspection.fits()) {
            table.texts(RecordContext.joined(", ", c.words().of(f.seat()), c.words().of(f.end())),
                    RecordContext.joined(" ", a.with(f.nominalMm(), "mm"), f.zone(), between(c, f.lowerMm(), f.upperMm())),
                    RecordContext.joined(" / ", sized(f.measuredMm()), sized(f.acrossMm())),
                    RecordContext.joined("; ", c.instrument(f.instrument()), c.name(f.by()), f.note()));
        }
        for (Runout r : inspection.runouts()) {
            table.texts(RecordContext.joined(", ", c.words().of(r.place()), c.words().of(r.end())),
                    RecordContext.joined(" ", a.with(r.diameterMm(), "mm"), between(c, null, r.limitMm())),
                    r.runoutMm() == null ? "" : c.say("seat.runout", Amounts.number(r.runoutMm(), 4)),
                    RecordContext.joined("; ", c.instrument(r.instrument()), c.name(r.by()), r.note()));
        }
        new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.part().equals(PART)
                && (v.path().startsWith("/fits/") || v.path().startsWith("/runouts/"))).toList());
    }

    /** A size to the micrometre: four digits would lose what a fit is judged by. */
    private static String sized(Double mm) {
        return mm == null ? "" : Amounts.number(mm, 7) + " mm";
    }

    private static String between(RecordContext c, Double lower, Double upper) {
        return lower == null && upper == null ? "" : c.say("seat.limits", sized(lower), sized(upper));
    }

    private static void run(RecordContext c, Sheet12 sheet, int index, ExcitationRun r) {
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.heading(c.say("run.heading", index + 1));
        page.pair(LABEL, c.say("run.when"), RecordContext.joined(", ", c.time(r.at()), c.name(r.by())));
        page.pair(LABEL, c.say("run.regulator"), c.yesNo(r.regulatorIsolated()));
        page.pair(LABEL, c.say("run.source"), RecordContext.joined(", ", a.with(r.batteryV(), "V dc"),
                a.with(r.exciterA(), "A dc")));
        page.pair(LABEL, c.say("run.speed"), a.with(r.speedRpm(), "r/min"));
        page.pair(LABEL, c.say("run.lineVolts"), volts(a, r.lineVolts()));
        page.pair(LABEL, c.say("run.neutralVolts"), volts(a, r.neutralVolts()));
        page.pair(LABEL, c.say("run.expected"), RecordContext.joined(", ", a.with(r.expectedV(), "V"),
                c.words().of(r.expectedFrom())));
        page.pair(LABEL, c.say("run.instrument"), c.instrument(r.instrument()));
        page.pair(LABEL, c.say("run.cautions"), c.name(r.cautionsBy()));
        page.pair(LABEL, c.say("note"), r.note());
        String place = "/excitationRuns/" + index;
        for (Verdict v : c.verdicts().all()) {
            if (v.part().equals(PART) && (v.path().equals(place) || v.path().startsWith(place + "/"))) {
                judged(c, sheet, v);
            }
        }
    }

    private static void judged(RecordContext c, Sheet12 sheet, Verdict v) {
        Table table = new Table(sheet.page(), 4, 2, 3, 2, 1);
        int row = table.row(Entry.text(v.title()), Entry.text(sheet.amounts().valueOf(v)), Entry.text(v.limitText()),
                Entry.blank(), Entry.text(sheet.word(Optional.of(v))).looks(Look.TABLE_STRONG));
        sheet.bar(row, table.start(3), table.span(3), v);
        sheet.page().note(v.reason());
    }

    /** Three voltages with their unit said once where all three are plain values. */
    static String volts(Amounts a, ThreeVolts v) {
        if (v == null) {
            return "";
        }
        if (v.values().size() == 3) {
            return v.values().stream().map(x -> Amounts.number(x, 5)).collect(Collectors.joining(" / ")) + " V";
        }
        return Stream.of(v.a(), v.b(), v.c()).map(o -> o == null ? "–" : a.observed(o, ReadingQuantity.VOLTAGE))
                .collect(Collectors.joining(" / "));
    }
}

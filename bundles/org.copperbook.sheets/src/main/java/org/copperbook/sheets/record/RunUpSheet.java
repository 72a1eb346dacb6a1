package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.WithstandTest;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** In-process winding tests and the final run-up; every attempt stands here. */
public final class RunUpSheet implements RecordSheet {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);
    private static final int LABEL = 4;
    private static final int POINT_BAR = 6;

    /** Places whose verdicts have no row of their own above. */
    private static final List<String> WITHOUT_ROW = List.of("/bearingTemperatures", "/regulation", "/sequenceRight",
            "/overspeed");

    @Override
    public void write(RecordContext c, Book book) {
        RunUp run = c.job().runUp().orElse(null);
        if (run == null) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("run-up.sheet"));
        general(c, sheet, run);
        FlashingTable.write(c, sheet, run.flashings());
        points(c, sheet, run.points());
        curves(c, sheet, run);
        LogTable.write(c, sheet, run.logs());
        withstands(c, sheet, run.withstands());
        SurgeTable.write(c, sheet, PART, run.surges());
        if (!run.readings().isEmpty()) {
            sheet.page().heading(c.say("run-up.readings"));
            new ReadingsTable(c, sheet).all(PART, "/readings/", run.readings());
        }
        vibration(c, sheet, run.vibration());
        bearings(c, sheet, run.bearingTemperatures());
        HeatRunTable.write(c, sheet, run.heatRuns());
        new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.part().equals(PART)
                && WITHOUT_ROW.stream().anyMatch(v.path()::startsWith)).toList());
    }

    private static void general(RecordContext c, Sheet12 sheet, RunUp run) {
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.gap();
        page.pair(LABEL, c.say("run-up.conditions"), run.conditions());
        page.pair(LABEL, c.say("run-up.duration"), a.with(run.durationMinutes(), "min"));
        String sequence = run.sequenceRight() == null ? "" : c.say(run.sequenceRight() ? "run-up.right" : "run-up.wrong");
        page.pair(LABEL, c.say("run-up.sequence"), RecordContext.joined(", ", run.phaseSequence(), sequence));
        RunUp.Regulation r = run.regulation();
        if (r != null) {
            page.pair(LABEL, c.say("run-up.regulation"), RecordContext.joined("; ",
                    r.setPointV() == null ? "" : c.say("run-up.setPoint", Amounts.number(r.setPointV(), 5)),
                    r.lowestV() == null ? "" : c.say("run-up.lowest", Amounts.number(r.lowestV(), 5)),
                    r.highestV() == null ? "" : c.say("run-up.highest", Amounts.number(r.highestV(), 5)),
                    r.responseSeconds() == null ? "" : c.say("run-up.response", Amounts.number(r.responseSeconds(), 3))));
        }
        RunUp.Overspeed o = run.overspeed();
        if (o != null) {
            page.pair(LABEL, c.say("run-up.overspeed"), RecordContext.joined("; ", a.with(o.speedRpm(), "r/min"),
                    a.with(o.seconds(), "s"), o.sound() == null ? "" : c.say(o.sound() ? "run-up.sound" : "run-up.unsound"),
                    o.cautionsBy() == null ? "" : c.say("cautions.by", c.name(o.cautionsBy())), o.note()));
        }
        page.pair(LABEL, c.say("run-up.mounting"), c.words().of(run.mounting()));
        page.pair(LABEL, c.say("run-up.noise"), run.noise());
        page.pair(LABEL, c.say("note"), run.note());
    }

    private static void points(RecordContext c, Sheet12 sheet, List<RunPoint> points) {
        if (points.isEmpty()) {
            return;
        }
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.heading(c.say("points.heading"));
        Table table = new Table(page, 2, 1, 1, 1, 3, 1, 2, 1).head(c.say("point.kind"), c.say("point.speed"),
                c.say("point.frequency"), c.say("point.exciter"), c.say("point.line"), c.say("point.load"), c.say("verdict.bar"),
                c.say("verdict.word"));
        RunningNote note = new RunningNote(page);
        for (int i = 0; i < points.size(); i++) {
            RunPoint p = points.get(i);
            note.next(Integer.toString(i + 1), RecordContext.joined("; ", c.name(p.by()), c.instrument(p.instrument()),
                    p.cautionsBy() == null ? "" : c.say("cautions.by", c.name(p.cautionsBy())), p.note()));
            Optional<Verdict> verdict = c.verdicts().beside(PART, "/points/" + i);
            String volts = RecordContext.joined("\n", AsFoundSheet.volts(a, p.lineVolts()),
                    p.neutralVolts() == null ? "" : c.say("point.neutral", AsFoundSheet.volts(a, p.neutralVolts())));
            int row = table.row(Entry.text(RecordContext.joined("\n", (i + 1) + " " + c.words().of(p.kind()),
                            RecordContext.joined(", ", c.words().of(p.source()), c.hour(p.at())))),
                    Entry.number(p.speedRpm(), 0), Entry.number(p.frequencyHz(), 2),
                    Entry.text(RecordContext.joined("\n", a.with(p.exciterV(), "V"), a.with(p.exciterA(), "A"))),
                    Entry.text(volts), Entry.text(RecordContext.joined("\n", a.with(p.loadW(), 1000, "kW"),
                            a.with(p.loadVar(), 1000, "kvar"), a.with(p.loadA(), "A"))), Entry.blank(),
                    Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(POINT_BAR), table.span(POINT_BAR), verdict);
        }
        note.done();
        page.note(c.say("point.heaviest"));
    }

    /** What the curves say as a whole: the verdicts on all points together. */
    private static void curves(RecordContext c, Sheet12 sheet, RunUp run) {
        if (run.storedCurve() != null) {
            String points = run.storedCurve().points().stream().filter(p -> p.fieldA() != null && p.lineV() != null)
                    .map(p -> Amounts.number(p.fieldA(), 4) + " A " + Amounts.number(p.lineV(), 4) + " V")
                    .collect(Collectors.joining("; "));
            sheet.page().pair(LABEL, c.say("points.stored"), RecordContext.joined(", ", run.storedCurve().source(),
                    sheet.amounts().with(run.storedCurve().speedRpm(), "r/min"), points));
        }
        new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.part().equals(PART)
                && v.path().equals("/points")).toList());
    }

    private static void withstands(RecordContext c, Sheet12 sheet, List<WithstandTest> tests) {
        if (tests.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("withstand.heading"));
        Table table = new Table(sheet.page(), 2, 1, 2, 1, 2, 2, 2).head(c.say("withstand.winding"), c.say("withstand.attempt"),
                c.say("withstand.volts"), c.say("withstand.seconds"), c.say("withstand.result"), c.say("reading.when"),
                c.say("verdict.word"));
        for (int i = 0; i < tests.size(); i++) {
            WithstandTest t = tests.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(PART, "/withstands/" + i);
            table.row(Entry.text(RecordContext.joined("\n", c.words().of(t.winding()), t.newWinding() == null ? ""
                            : c.say(t.newWinding() ? "withstand.new" : "withstand.old"))), Entry.number(t.attempt()),
                    Entry.text(RecordContext.joined(" ", sheet.amounts().with(t.volts(), "V"), t.direct() == null ? ""
                            : c.say(t.direct() ? "withstand.dc" : "withstand.ac"))), Entry.number(t.seconds(), 0),
                    Entry.text(t.held() == null ? c.say("withstand.notDone") : c.say(t.held() ? "withstand.held" : "withstand.failed")),
                    Entry.text(c.whoAndWhen(t.by(), t.at())), Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            after(c, sheet, t.instrument(), t.cautionsBy(), t.note());
        }
    }

    private static void after(RecordContext c, Sheet12 sheet, String instrument, String cautionsBy, String note) {
        sheet.page().note(RecordContext.joined("; ", c.instrument(instrument),
                cautionsBy == null ? "" : c.say("cautions.by", c.name(cautionsBy)), note));
    }

    private static void vibration(RecordContext c, Sheet12 sheet, List<RunUp.Vibration> all) {
        if (all.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("vibration.heading"));
        Table table = new Table(sheet.page(), 2, 2, 2, 2, 2, 2).head(c.say("vibration.end"), c.say("vibration.direction"),
                c.say("vibration.value"), c.say("reading.instrument"), c.say("verdict.bar"), c.say("verdict.word"));
        for (int i = 0; i < all.size(); i++) {
            RunUp.Vibration v = all.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(PART, "/vibration/" + i);
            int row = table.row(Entry.text(c.words().of(v.end())), Entry.text(c.words().of(v.direction())),
                    Entry.number(v.mmPerSecond(), 2).left(), Entry.text(c.instrument(v.instrument())), Entry.blank(),
                    Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(4), table.span(4), verdict);
        }
    }

    private static void bearings(RecordContext c, Sheet12 sheet, List<RunUp.BearingTemperature> all) {
        if (all.isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("bearing.heading"));
        Table table = new Table(sheet.page(), 3, 3, 3, 3).head(c.say("bearing.minutes"), c.say("bearing.de"),
                c.say("bearing.nde"), c.say("bearing.ambient"));
        for (RunUp.BearingTemperature b : all) {
            table.row(Entry.number(b.minutes(), 0).left(), Entry.number(b.driveEndCelsius(), 1).left(),
                    Entry.number(b.nonDriveEndCelsius(), 1).left(), Entry.number(b.ambientCelsius(), 1).left());
        }
    }
}

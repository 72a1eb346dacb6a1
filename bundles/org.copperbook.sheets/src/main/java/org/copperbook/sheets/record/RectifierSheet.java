package org.copperbook.sheets.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.RectifierDemand;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.FittedSet;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.rectifier.Suppressor;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.SheetPicture;
import org.copperbook.sheets.page.Table;
import org.copperbook.sheets.plates.PlatesOfSet;
import org.copperbook.sheets.plates.PlatesPicture;

/** The rotating rectifier, position by position. */
public final class RectifierSheet implements RecordSheet {

    private static final PartKey PART = PartKey.of(PartKind.RECTIFIER);
    private static final int LABEL = 4;
    private static final int TORQUE_BAR = 6;
    private static final float TALLEST = 300;
    private static final UnaryOperator<Double> DIGITS = v -> new BigDecimal(v).round(new MathContext(4)).doubleValue();

    @Override
    public void write(RecordContext c, Book book) {
        RectifierSet set = c.job().rectifier().orElse(null);
        if (set == null) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("rectifier.sheet"));
        SheetPage page = sheet.page();
        page.gap();
        page.pair(LABEL, c.say("rectifier.circuit"), c.words().of(set.circuit()));
        page.pair(LABEL, c.say("rectifier.reason"), set.reasonForChange());
        page.pair(LABEL, c.say("note"), set.note());
        SheetPicture.put(page, PlatesPicture.of(PlatesOfSet.view(set, c.verdicts().all(),
                new RecordPlateWords(c, sheet.amounts()))), TALLEST);
        page.heading(c.say("rectifier.asFound"));
        positions(c, sheet, set.positions(), true);
        if (set.fitted() != null) {
            fitted(c, sheet, set.fitted());
        }
        if (set.positions().stream().anyMatch(p -> p.asLeftForward() != null || p.asLeftReverse() != null
                || p.torqueNm() != null)) {
            page.heading(c.say("rectifier.asLeft"));
            positions(c, sheet, set.positions(), false);
        }
        if (set.suppressor() != null) {
            suppressor(c, sheet, set.suppressor());
        }
        demand(c, sheet);
        new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.part().equals(PART)
                && (v.path().isEmpty() || v.path().equals("/positions") || v.path().startsWith("/fitted")
                || v.path().equals("/duty"))).toList());
    }

    private static void positions(RecordContext c, Sheet12 sheet, List<DiodePosition> positions, boolean found) {
        Table table = found
                ? new Table(sheet.page(), 1, 2, 1, 2, 2, 2, 2).head(c.say("diode.position"), c.say("diode.plate"),
                        c.say("diode.lead"), c.say("diode.forward"), c.say("diode.reverse"), c.say("diode.how"),
                        c.say("verdict.word"))
                : new Table(sheet.page(), 1, 2, 1, 2, 2, 1, 2, 1).head(c.say("diode.position"), c.say("diode.plate"),
                        c.say("diode.lead"), c.say("diode.forward"), c.say("diode.reverse"), c.say("diode.torque"),
                        c.say("diode.torqueBar"), c.say("verdict.word"));
        for (int i = 0; i < positions.size(); i++) {
            DiodePosition p = positions.get(i);
            Reading forward = found ? p.asFoundForward() : p.asLeftForward();
            Reading reverse = found ? p.asFoundReverse() : p.asLeftReverse();
            String place = "/positions/" + i;
            Optional<Verdict> reading = c.verdicts().beside(PART, place + (found ? "/asFoundForward" : "/asLeftForward"));
            Optional<Verdict> torque = found ? Optional.empty() : c.verdicts().beside(PART, place + "/torqueNm");
            Optional<Verdict> base = found ? Optional.empty() : c.verdicts().beside(PART, place + "/basePolarity");
            String words = words(c, sheet, reading, torque, base);
            List<Entry> row = new ArrayList<>(List.of(Entry.text(p.position()),
                    Entry.text(RecordContext.joined(",\n", c.words().of(p.plate()), c.words().of(p.basePolarity()))),
                    Entry.text(p.lead()), Entry.text(shown(c, sheet, forward)), Entry.text(shown(c, sheet, reverse)),
                    Entry.text(found ? how(c, forward) : sheet.amounts().with(p.torqueNm(), "N m"))));
            if (!found) {
                row.add(Entry.blank());
            }
            row.add(Entry.text(words).looks(Look.TABLE_STRONG));
            int at = table.row(row.toArray(Entry[]::new));
            if (!found) {
                sheet.bar(at, table.start(TORQUE_BAR), table.span(TORQUE_BAR), torque);
            }
        }
    }

    /** One word when readings, torque and base agree, each with its own otherwise. */
    private static String words(RecordContext c, Sheet12 sheet, Optional<Verdict> reading, Optional<Verdict> torque,
            Optional<Verdict> base) {
        long different = Stream.of(reading, torque, base).flatMap(Optional::stream).map(Verdict::outcome).distinct().count();
        if (different == 1) {
            return Stream.of(reading, torque, base).filter(Optional::isPresent).findFirst().map(sheet::word).orElse("");
        }
        return RecordContext.joined("\n", sheet.word(reading),
                torque.map(v -> c.say("diode.torqueWord", sheet.word(torque))).orElse(""),
                base.map(v -> c.say("diode.baseWord", sheet.word(base))).orElse(""));
    }

    private static String shown(RecordContext c, Sheet12 sheet, Reading r) {
        return r == null ? "" : RecordContext.joined("\n", sheet.amounts().observed(r.observed(), r.quantity()),
                c.words().of(r.quantity()));
    }

    private static String how(RecordContext c, Reading r) {
        if (r == null) {
            return "";
        }
        return RecordContext.joined("\n", r.isolated() == null ? ""
                : c.say(r.isolated() ? "reading.isolated" : "reading.inCircuit"), r.instrument());
    }

    /** What the machine asks of a diode; figures that are open say what is missing. */
    private static void demand(RecordContext c, Sheet12 sheet) {
        RectifierDemand d = RectifierDemand.of(c.job(), c.shop()).orElseThrow();
        sheet.page().heading(c.say("demand.heading"));
        Amounts a = sheet.amounts();
        sheet.page().pair(LABEL, c.say("demand.field"), RecordContext.joined(", ",
                a.with(d.fieldV().orElse(null), "V dc"), a.with(d.fieldA().orElse(null), "A dc")));
        sheet.page().pair(LABEL, c.say("demand.peak"), a.with(d.peakReverseV().map(DIGITS).orElse(null), "V"));
        sheet.page().pair(LABEL, c.say("demand.mean"), a.with(d.meanA().map(DIGITS).orElse(null), "A"));
        sheet.page().pair(LABEL, c.say("demand.open"), String.join(" ", d.missing()));
    }

    private static void fitted(RecordContext c, Sheet12 sheet, FittedSet f) {
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.heading(c.say("fitted.heading"));
        page.pair(LABEL, c.say("fitted.part"), f.makersPart());
        page.pair(LABEL, c.say("fitted.lot"), f.lot());
        page.pair(LABEL, c.say("fitted.complete"), c.yesNo(f.complete()));
        page.pair(LABEL, c.say("fitted.peak"), a.with(f.repetitivePeakV(), "V"));
        page.pair(LABEL, c.say("fitted.average"), a.with(f.averageA(), "A"));
        page.pair(LABEL, c.say("fitted.stud"), f.stud());
        page.pair(LABEL, c.say("fitted.torque"), f.torqueMinNm() == null && f.torqueMaxNm() == null
                ? c.say("fitted.noSheet") : RecordContext.joined(" – ", a.with(f.torqueMinNm(), "N m"), a.with(f.torqueMaxNm(), "N m")));
        page.pair(LABEL, c.say("fitted.wrench"), RecordContext.joined(", ", c.instrument(f.wrench()),
                c.shop().instruments().find(f.wrench()).map(i -> i.calibrationDue() == null ? ""
                        : c.say("fitted.calibration", i.calibrationDue())).orElse("")));
        page.pair(LABEL, c.say("fitted.compound"), f.compound());
        page.pair(LABEL, c.say("fitted.by"), RecordContext.joined(", ", c.time(f.at()), c.name(f.by())));
    }

    private static void suppressor(RecordContext c, Sheet12 sheet, Suppressor s) {
        sheet.page().heading(c.say("suppressor.heading"));
        sheet.page().pair(LABEL, c.say("suppressor.kind"), c.words().of(s.kind()));
        sheet.page().pair(LABEL, c.say("suppressor.changed"), c.yesNo(s.changed()));
        sheet.page().pair(LABEL, c.say("note"), s.note());
        if (s.asFound() != null || s.asLeft() != null) {
            ReadingsTable table = new ReadingsTable(c, sheet);
            table.one(PART, "/suppressor/asFound", c.say("suppressor.asFound"), s.asFound());
            table.one(PART, "/suppressor/asLeft", c.say("suppressor.asLeft"), s.asLeft());
            table.done();
        }
    }
}

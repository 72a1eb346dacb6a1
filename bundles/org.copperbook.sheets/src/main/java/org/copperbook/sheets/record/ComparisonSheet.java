package org.copperbook.sheets.record;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.Conductor;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.jobs.check.FoundAndLeft;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.chart.ChartScene;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.SheetPicture;
import org.copperbook.sheets.page.Table;
import org.copperbook.sheets.record.StandingReadings.Pair;
import org.copperbook.sheets.record.StandingReadings.Standing;

/** Winding resistance as found beside as left, all at one temperature, with deviation, limit and verdict. */
public final class ComparisonSheet implements RecordSheet {

    private static final int BAR = 7;
    private static final double CHART_WIDE = 1000;
    private static final double CHART_HIGH = 420;
    private static final float TALLEST = 330;

    @Override
    public void write(RecordContext c, Book book) {
        StandingReadings readings = new StandingReadings(c.job());
        if (readings.windings().isEmpty()) {
            return;
        }
        Sheet12 sheet = Sheet12.landscape(c, book, c.say("comparison.sheet"));
        double reference = c.shop().workshop().referenceCelsius();
        sheet.page().paragraph(c.say("comparison.temperature", Amounts.number(reference, 4),
                Amounts.number(c.shop().workshop().copperConstant(), 4)));
        for (WindingRole role : WindingRole.values()) {
            if (readings.windings().contains(role)) {
                winding(c, sheet, role, readings.of(role), reference);
            }
        }
    }

    private static void winding(RecordContext c, Sheet12 sheet, WindingRole role, List<Pair> pairs, double reference) {
        SheetPage page = sheet.page();
        page.heading(c.words().of(role));
        String at = Amounts.number(reference, 4);
        Table table = new Table(page, 1, 2, 1, 1, 2, 1, 1, 2, 1).head(c.say("comparison.where"), c.say("comparison.found"),
                c.say("comparison.foundAt", at), c.say("comparison.foundWord"), c.say("comparison.left"),
                c.say("comparison.leftAt", at), c.say("comparison.deviation"), c.say("verdict.bar"), c.say("verdict.word"));
        for (Pair p : pairs) {
            Optional<Verdict> deviation = p.left() == null ? Optional.empty()
                    : c.verdicts().at(p.left().part(), p.left().pointer(), ".deviation.");
            int row = table.row(Entry.text(p.label()), Entry.text(read(sheet, p.found())),
                    Entry.text(atReference(c, sheet, p.found(), reference)), Entry.text(word(c, sheet, p.found())),
                    Entry.text(read(sheet, p.left())), Entry.text(atReference(c, sheet, p.left(), reference)),
                    Entry.text(deviation.map(v -> sheet.amounts().valueOf(v)).orElse("")), Entry.blank(),
                    Entry.text(sheet.word(deviation)).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(BAR), table.span(BAR), deviation);
        }
        limits(c, page, pairs);
        chart(c, page, role, reference);
        new VerdictRows(c, sheet).write(c.verdicts().startingWith(role.word() + ".unbalance."));
    }

    /** The same picture as on the page of the winding. */
    private static void chart(RecordContext c, SheetPage page, WindingRole role, double reference) {
        try {
            ResistanceChart.of(c.words().of(role), FoundAndLeft.of(c.job(), c.shop(), role), reference, Locale.ENGLISH)
                    .ifPresent(chart -> SheetPicture.put(page, ChartScene.of(chart, CHART_WIDE, CHART_HIGH),
                            TALLEST));
        } catch (OutOfRange e) {
            page.note(e.getMessage());
        }
    }

    /** The limit is the same down the column: said once under the table. */
    private static void limits(RecordContext c, SheetPage page, List<Pair> pairs) {
        pairs.stream().filter(p -> p.left() != null)
                .map(p -> c.verdicts().at(p.left().part(), p.left().pointer(), ".deviation."))
                .flatMap(Optional::stream).filter(v -> v.bounds() != null)
                .map(v -> c.say("comparison.limit", v.limitText(), v.source())).distinct().forEach(page::note);
    }

    private static String read(Sheet12 sheet, Standing s) {
        if (s == null) {
            return "–";
        }
        String at = s.reading().windingCelsius() == null ? "" : "@ " + Amounts.number(s.reading().windingCelsius(), 4) + " °C";
        return RecordContext.joined(" ", sheet.amounts().observed(s.reading().observed(), s.reading().quantity()), at);
    }

    private static String word(RecordContext c, Sheet12 sheet, Standing s) {
        return s == null ? "" : sheet.word(c.verdicts().beside(s.part(), s.pointer()));
    }

    private static String atReference(RecordContext c, Sheet12 sheet, Standing s, double reference) {
        if (s == null || s.reading().observed() == null || !s.reading().observed().isValue()
                || s.reading().windingCelsius() == null) {
            return "–";
        }
        Conductor copper = c.shop().workshop().copperConstant() == 234.5 ? Conductor.COPPER_IEEE : Conductor.COPPER_IEC;
        try {
            return sheet.amounts().ohms(s.reading().observed().value()
                    * TemperatureCorrection.factor(copper, s.reading().windingCelsius(), reference));
        } catch (OutOfRange e) {
            return "–";
        }
    }
}

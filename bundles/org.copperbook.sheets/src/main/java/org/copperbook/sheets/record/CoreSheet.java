package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.core.CableSize;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.DryingState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.core.LoopTestPlan;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.impregnation.Impregnation.DryingPoint;
import org.copperbook.jobs.impregnation.Impregnation.Treatment;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartScene;
import org.copperbook.sheets.drying.DryingChart;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.SheetPicture;
import org.copperbook.sheets.page.Table;
import org.copperbook.sheets.picture.Scene;

/** Core loop test, burn-out, impregnation and drying. */
public final class CoreSheet implements RecordSheet {

    private static final PartKey CORE = PartKey.of(PartKind.CORE);
    private static final int LABEL = 4;
    private static final float TALLEST = 250;

    @Override
    public void write(RecordContext c, Book book) {
        Optional<CoreTest> core = c.job().part(PartKind.CORE, CoreTest.class);
        Optional<Impregnation> resin = c.job().part(PartKind.IMPREGNATION, Impregnation.class);
        if (core.isEmpty() && resin.isEmpty()) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("core.sheet"));
        core.ifPresent(t -> core(c, sheet, t));
        resin.ifPresent(i -> impregnation(c, sheet, i));
    }

    private static void core(RecordContext c, Sheet12 sheet, CoreTest t) {
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        LoopTestPlan plan = LoopTestPlan.of(c.job());
        page.heading(c.say("core.heading", c.words().of(t.winding())));
        plan.plan().ifPresent(p -> {
            page.pair(LABEL, c.say("core.plan"), c.say("core.planText", p.turns(), Amounts.number(p.fluxDensity(), 4)));
            page.pair(LABEL, c.say("core.supply"), c.say("core.supplyText", Amounts.number(p.amperes(), 4),
                    Amounts.number(p.voltAmperes(), 4), CableSize.noLessThan(p.cableArea() * 1e6)
                            .map(s -> Amounts.number(s, 4)).orElse("> 1000")));
        });
        Table table = new Table(page, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2).head(c.say("core.stage"), c.say("core.turns"),
                c.say("core.volts"), c.say("core.amps"), c.say("core.watts"), c.say("core.flux"), c.say("core.mass"),
                c.say("core.mean"), c.say("core.hottest"), c.say("core.when"));
        for (CoreTest.LoopRun r : t.runs()) {
            table.row(Entry.text(c.words().of(r.stage())), Entry.number(r.turns()), Entry.number(r.volts(), 1),
                    Entry.number(r.amps(), 1), Entry.number(r.watts(), 1), Entry.number(r.fluxDensityT(), 3),
                    Entry.number(r.yokeMassKg(), 1), Entry.number(r.meanCelsius(), 1), Entry.number(r.hottestCelsius(), 1),
                    Entry.text(c.whoAndWhen(r.by(), r.at())));
            String more = RecordContext.joined("; ", a.with(r.frequencyHz(), "Hz"),
                    plan.specificLoss(r).map(w -> c.say("core.specific", Amounts.number(w, 4))).orElse(""),
                    plan.fluxDensity(r).filter(b -> r.fluxDensityT() == null)
                            .map(b -> c.say("core.density", Amounts.number(b, 4))).orElse(""), c.instrument(r.instrument()),
                    r.cautionsBy() == null ? "" : c.say("cautions.by", c.name(r.cautionsBy())), r.note());
            page.note(more);
        }
        page.pair(LABEL, c.say("core.burnOut"), RecordContext.joined(", ", a.with(t.burnOutHours(), "h"),
                t.burnOutMaxCelsius() == null ? "" : c.say("core.burnOutMax", Amounts.number(t.burnOutMaxCelsius(), 4))));
        page.pair(LABEL, c.say("core.plate"), c.words().of(t.corePlate()));
        page.pair(LABEL, c.say("note"), t.note());
        List<Verdict> verdicts = c.verdicts().all().stream().filter(v -> v.part().equals(CORE)).toList();
        new VerdictRows(c, sheet).write(verdicts);
    }

    private static void impregnation(RecordContext c, Sheet12 sheet, Impregnation i) {
        SheetPage page = sheet.page();
        if (!i.treatments().isEmpty()) {
            page.heading(c.say("resin.heading"));
            Table table = new Table(page, 2, 2, 2, 1, 1, 2, 2).head(c.say("resin.winding"), c.say("resin.resin"), c.say("resin.method"),
                    c.say("resin.preheat"), c.say("resin.soak"), c.say("resin.cure"), c.say("resin.when"));
            for (Treatment t : i.treatments()) {
                table.texts(t.winding(), RecordContext.joined(", ", t.resin(), t.lot() == null ? "" : c.say("resin.lot", t.lot())),
                        c.words().of(t.method()), pair(t.preheatCelsius(), t.preheatMinutes()),
                        t.soakMinutes() == null ? "" : Amounts.number(t.soakMinutes(), 5) + " min",
                        pair(t.cureCelsius(), t.cureMinutes()), c.whoAndWhen(t.by(), t.at()));
            }
        }
        if (!i.drying().isEmpty()) {
            page.heading(c.say("drying.heading"));
            DryingState.of(c.job(), c.shop()).ifPresent(s -> SheetPicture.put(page, curve(c, s), TALLEST));
            Table table = new Table(page, 3, 3, 6).head(c.say("drying.minutes"), c.say("reading.celsius"), c.say("drying.insulation"));
            for (DryingPoint p : i.drying()) {
                table.row(Entry.number(p.minutes(), 0).left(), Entry.number(p.windingCelsius(), 1).left(),
                        Entry.text(sheet.amounts().ohms(p.insulationOhm())));
            }
        }
        new VerdictRows(c, sheet).write(c.verdicts().all().stream()
                .filter(v -> v.part().kind() == PartKind.IMPREGNATION).toList());
        page.pair(LABEL, c.say("note"), i.note());
    }

    private static Scene curve(RecordContext c, DryingState s) {
        Chart chart = DryingChart.of(s, new DryingChart.Labels(c.say("drying.heading"), c.say("drying.time"),
                c.say("drying.insulation"), c.say("drying.at40"), c.say("drying.asRead"), ""));
        return chart.isEmpty() ? Scene.EMPTY : ChartScene.of(chart);
    }

    private static String pair(Double celsius, Double minutes) {
        return RecordContext.joined(",\n", celsius == null ? "" : Amounts.number(celsius, 4) + " °C",
                minutes == null ? "" : Amounts.number(minutes, 5) + " min");
    }
}

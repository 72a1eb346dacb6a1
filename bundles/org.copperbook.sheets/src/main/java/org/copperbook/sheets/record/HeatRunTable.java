package org.copperbook.sheets.record;

import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HeatRunCurve;
import org.copperbook.jobs.runup.HeatRun;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** Heat runs with what was read cold, during the run and after shutdown; every attempt. */
final class HeatRunTable {

    private static final int LABEL = 4;

    private HeatRunTable() {
    }

    static void write(RecordContext c, Sheet12 sheet, List<HeatRun> runs) {
        for (int i = 0; i < runs.size(); i++) {
            HeatRun run = runs.get(i);
            SheetPage page = sheet.page();
            Amounts a = sheet.amounts();
            page.heading(c.say("heat.heading", i + 1, c.words().of(run.winding())));
            page.pair(LABEL, c.say("heat.cold"), RecordContext.joined(" @ ", a.ohms(run.coldOhm()),
                    a.in(run.coldCelsius(), "degC")));
            page.pair(LABEL, c.say("heat.run"), RecordContext.joined(", ", a.with(run.loadA(), "A"), a.with(run.hours(), "h")));
            page.pair(LABEL, c.say("heat.coolant"), a.in(run.coolantCelsius(), "degC"));
            page.pair(LABEL, c.say("heat.by"), RecordContext.joined("; ", c.name(run.by()), c.instrument(run.instrument()),
                    run.cautionsBy() == null ? "" : c.say("cautions.by", c.name(run.cautionsBy()))));
            page.pair(LABEL, c.say("note"), run.note());
            cooling(c, sheet, run);
            String place = "/heatRuns/" + i;
            new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.part().equals(PartKey.of(PartKind.RUN_UP))
                    && v.path().equals(place)).toList());
        }
    }

    private static void cooling(RecordContext c, Sheet12 sheet, HeatRun run) {
        if (run.cooling().isEmpty()) {
            return;
        }
        sheet.page().gap();
        Table table = new Table(sheet.page(), 4, 4, 4).head(c.say("heat.seconds"), c.say("heat.ohm"), c.say("heat.celsius"));
        for (HeatRun.Cooling read : run.cooling()) {
            HeatRun one = new HeatRun(run.winding(), run.coldOhm(), run.coldCelsius(), run.coolantCelsius(), run.loadA(),
                    run.hours(), List.of(read), run.instrument(), run.by(), run.cautionsBy(), run.note(), run.more());
            List<double[]> celsius = HeatRunCurve.readings(one, c.job(), c.shop());
            table.row(Entry.number(read.seconds(), 0).left(), Entry.text(sheet.amounts().ohms(read.ohm())),
                    celsius.isEmpty() ? Entry.text("") : Entry.number(celsius.get(0)[1], 1).left());
        }
    }
}

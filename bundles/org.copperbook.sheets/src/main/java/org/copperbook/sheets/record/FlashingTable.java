package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.runup.Flashing;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** How the exciter field was flashed, each time. */
final class FlashingTable {

    private FlashingTable() {
    }

    static void write(RecordContext c, Sheet12 sheet, List<Flashing> all) {
        if (all.isEmpty()) {
            return;
        }
        Amounts a = sheet.amounts();
        sheet.page().heading(c.say("flashing.heading"));
        Table table = new Table(sheet.page(), 2, 4, 2, 2, 2).head(c.say("flashing.battery"), c.say("flashing.how"),
                c.say("flashing.after"), c.say("reading.when"), c.say("verdict.word"));
        for (int i = 0; i < all.size(); i++) {
            Flashing f = all.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(PartKey.of(PartKind.RUN_UP), "/flashings/" + i);
            table.row(Entry.text(RecordContext.joined(", ", a.with(f.batteryV(), "V"), a.with(f.seconds(), "s"),
                            f.positiveTo() == null ? "" : c.say("flashing.positive", f.positiveTo()))),
                    Entry.text(RecordContext.joined("\n", said(c, "flashing.diode", f.blockingDiode()),
                            said(c, "flashing.leads", f.leadsOff()), said(c, "flashing.standstill", f.standstill()))),
                    Entry.text(a.with(f.voltsAfter(), "V")), Entry.text(c.whoAndWhen(f.by(), f.at())),
                    Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.page().note(RecordContext.joined("; ", f.cautionsBy() == null ? ""
                    : c.say("cautions.by", c.name(f.cautionsBy())), f.note(), verdict.map(Verdict::reason).orElse("")));
        }
    }

    private static String said(RecordContext c, String key, Boolean answer) {
        return c.say(key, answer == null ? c.say("flashing.unsaid") : c.yesNo(answer));
    }
}

package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** Readings, each with temperature, instrument, who and when, and what was judged of it. */
final class ReadingsTable {

    private static final int BAR = 5;

    private final RecordContext c;
    private final Sheet12 sheet;
    private final Table table;
    private final RunningNote note;

    ReadingsTable(RecordContext context, Sheet12 sheet) {
        this.c = context;
        this.sheet = sheet;
        this.table = new Table(sheet.page(), 2, 2, 1, 2, 2, 2, 1).head(c.say("reading.where"), c.say("reading.reading"),
                c.say("reading.celsius"), c.say("reading.instrument"), c.say("reading.when"), c.say("verdict.bar"),
                c.say("verdict.word"));
        this.note = new RunningNote(sheet.page());
    }

    /** Writes all readings of a list inside a part and ends the table. */
    void all(PartKey part, String pointer, List<Reading> readings) {
        for (int i = 0; i < readings.size(); i++) {
            one(part, pointer + i, where(readings.get(i)), readings.get(i));
        }
        done();
    }

    /** Ends the table with what is still to be said of its last rows. */
    void done() {
        note.done();
    }

    /** Writes one reading; null writes nothing. */
    void one(PartKey part, String pointer, String where, Reading r) {
        if (r == null) {
            return;
        }
        note.next(r.id() == null ? "" : r.id(), remark(r));
        Optional<Verdict> verdict = c.verdicts().beside(part, pointer);
        String said = RecordContext.joined("\n", sheet.amounts().observed(r.observed(), r.quantity()), applied(r));
        int row = table.row(Entry.text(where), Entry.text(said),
                Entry.number(r.windingCelsius(), 1), Entry.text(RecordContext.joined(", ", r.instrument(),
                        c.words().of(r.method()), isolated(r))), Entry.text(c.whoAndWhen(r.by(), r.at())), Entry.blank(),
                Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
        sheet.bar(row, table.start(BAR), table.span(BAR), verdict);
    }

    private String applied(Reading r) {
        return RecordContext.joined("\n", sheet.amounts().with(r.testVolts(), "V dc"),
                r.afterSeconds() == null ? "" : c.say("reading.after", Amounts.number(r.afterSeconds(), 5)));
    }

    private String remark(Reading r) {
        return RecordContext.joined("; ", r.note(),
                r.temperatureHow() == null ? "" : c.say("reading.temperatureHow", r.temperatureHow()),
                r.ambientCelsius() == null ? "" : c.say("reading.ambient", Amounts.number(r.ambientCelsius(), 4)),
                r.humidityPercent() == null ? "" : c.say("reading.humidity", Amounts.number(r.humidityPercent(), 4)),
                r.supersedes() == null ? "" : c.say("reading.supersedes", r.supersedes(), r.reason() == null ? "" : r.reason()));
    }

    private String isolated(Reading r) {
        return r.isolated() == null ? "" : c.say(r.isolated() ? "reading.isolated" : "reading.inCircuit");
    }

    private String where(Reading r) {
        Place p = r.place();
        String quantity = r.quantity() == ReadingQuantity.RESISTANCE ? "" : c.words().of(r.quantity());
        if (p == null) {
            return RecordContext.joined("\n", quantity, c.words().of(r.state()));
        }
        return RecordContext.joined("\n", RecordContext.joined(" ", c.words().of(p.winding()), p.mark()),
                RecordContext.joined(", ", quantity, p.kind() == Place.Kind.TERMINAL_PAIR ? "" : c.words().of(p.kind())),
                c.words().of(r.state()));
    }
}

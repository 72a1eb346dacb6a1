package org.copperbook.sheets.record;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Table;

/** The instruments that the job names, with accuracy and calibration. */
public final class InstrumentSheet implements RecordSheet {

    @Override
    public void write(RecordContext c, Book book) {
        Map<String, LocalDate> used = new InstrumentsUsed(c.zone()).of(c.job());
        if (used.isEmpty()) {
            return;
        }
        Sheet12 sheet = Sheet12.landscape(c, book, c.say("instrument.sheet"));
        sheet.page().paragraph(c.say("instrument.accuracy"));
        Table table = new Table(sheet.page(), 1, 3, 3, 2, 1, 1, 1).head(c.say("instrument.id"), c.say("instrument.name"),
                c.say("instrument.ranges"), c.say("instrument.certificate"), c.say("instrument.calibrated"), c.say("instrument.due"), c.say("instrument.lastUse"));
        used.forEach((id, last) -> c.shop().instruments().find(id).ifPresentOrElse(i -> one(c, table, i, last),
                () -> table.row(Entry.text(id), Entry.text(c.say("instrument.unknown")), Entry.blank(), Entry.blank(),
                        Entry.blank(), Entry.blank(), Entry.text(last.equals(LocalDate.MIN) ? "" : last.toString()))));
    }

    private static void one(RecordContext c, Table table, Instrument i, LocalDate last) {
        String ranges = i.ranges().stream().map(r -> range(c, r)).collect(Collectors.joining("\n"));
        boolean known = !last.equals(LocalDate.MIN);
        boolean late = known && i.lapsedOn(last).isPresent();
        table.row(Entry.text(i.id()), Entry.text(RecordContext.joined(", ", i.name(), fourWire(c, i))), Entry.text(ranges), Entry.text(RecordContext.joined("\n", i.certificate(),
                        late ? c.say("instrument.late") : "")), day(i.calibrated()), day(i.calibrationDue()),
                known ? day(last) : Entry.blank());
    }

    /** Said unless the instrument's name says it already. */
    private static String fourWire(RecordContext c, Instrument i) {
        String word = c.say("instrument.fourWire");
        boolean said = i.name() != null && i.name().toLowerCase(Locale.ROOT).contains(word);
        return Boolean.TRUE.equals(i.fourWire()) && !said ? word : "";
    }

    private static Entry day(LocalDate day) {
        return Entry.text(day == null ? "" : day.toString());
    }

    private static String range(RecordContext c, Instrument.Range r) {
        String unit = "ohm".equals(r.quantity()) ? "Ω" : r.quantity() == null ? "" : r.quantity();
        return c.say("instrument.range", "ohm".equals(r.quantity()) ? new Amounts(c.words()).ohms(r.upTo())
                : RecordContext.joined(" ", text(r.upTo()), unit), text(r.percentOfReading()), text(r.digits()),
                "ohm".equals(r.quantity()) ? new Amounts(c.words()).ohms(r.resolution()) : RecordContext.joined(" ", text(r.resolution()), unit));
    }

    private static String text(Double value) {
        return value == null ? "?" : Amounts.number(value, 6);
    }
}

package org.copperbook.sheets.record;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.ReceivedPart;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.check.PlateWords;
import org.copperbook.jobs.limits.Limit;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** Booking in and the rating plate. */
public final class BookingSheet implements RecordSheet {

    private static final int LABEL = 3;

    @Override
    public void write(RecordContext c, Book book) {
        if (c.job().booking().isEmpty() && c.job().nameplate().isEmpty()) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("booking.sheet"));
        c.job().booking().ifPresent(b -> booking(c, sheet, b));
        c.job().standing().map(Standing::waiting).ifPresent(w -> sheet.page().pair(LABEL, c.say("booking.waiting"),
                RecordContext.joined(", ", c.words().of(w.waitingFor()), w.reason(), c.say("since", c.time(w.since())))));
        c.job().nameplate().ifPresent(p -> plate(c, sheet, p));
    }

    private static void booking(RecordContext c, Sheet12 sheet, Booking b) {
        SheetPage page = sheet.page();
        page.heading(c.say("booking.heading"));
        page.pair(LABEL, c.say("booking.at"), RecordContext.joined(", ", c.time(b.bookedAt()), c.name(b.bookedBy())));
        page.pair(LABEL, c.say("booking.customer"), b.customer());
        page.pair(LABEL, c.say("booking.contact"), b.contactName(c::name));
        page.pair(LABEL, c.say("booking.order"), b.orderNo());
        page.pair(LABEL, c.say("booking.machine"), b.machine());
        page.pair(LABEL, c.say("booking.kind"), c.words().of(b.machineKind()));
        page.pair(LABEL, c.say("booking.fault"), b.reportedFault());
        page.pair(LABEL, c.say("booking.priority"), c.words().of(b.priority()));
        page.pair(LABEL, c.say("booking.promised"), Entry.day(b.promised()));
        page.pair(LABEL, c.say("booking.arrived"), b.arrivedBy());
        page.pair(LABEL, c.say("booking.damage"), b.transportDamage());
        page.pair(LABEL, c.say("booking.hazards"), RecordContext.joined("; ",
                b.hazards().stream().map(c.words()::of).collect(Collectors.joining(", ")), b.hazardNote()));
        page.pair(LABEL, c.say("booking.mass"), sheet.amounts().with(b.liftingMassKg(), "kg"));
        page.pair(LABEL, c.say("booking.tag"), b.tag());
        page.pair(LABEL, c.say("booking.earlier"), b.earlierJob());
        if (!b.parts().isEmpty()) {
            page.gap();
            Table table = new Table(page, 4, 2, 6).head(c.say("part.name"), c.say("part.came"), c.say("note"));
            for (ReceivedPart p : b.parts()) {
                table.texts(p.name(), p.received() == null ? c.say("part.notLooked")
                        : c.say(p.received() ? "part.received" : "part.missing"), p.note());
            }
        }
    }

    private static void makersLimits(RecordContext c, Sheet12 sheet, Nameplate p) {
        if (p.makerLimits().isEmpty()) {
            return;
        }
        sheet.page().heading(c.say("plate.limits"));
        Table table = new Table(sheet.page(), 4, 2, 2, 4).head(c.say("verdict.what"), c.say("plate.least"), c.say("plate.most"),
                c.say("verdict.source"));
        for (Limit l : p.makerLimits()) {
            table.texts(RecordContext.joined(" ", l.title() == null ? l.id() : l.title(), l.atCelsius() == null ? ""
                            : c.say("plate.atCelsius", Amounts.number(l.atCelsius(), 4))), sheet.amounts().in(l.lower(), l.unit()),
                    sheet.amounts().in(l.upper(), l.unit()), RecordContext.joined(", ", l.source(), l.edition()));
        }
    }

    private static void plate(RecordContext c, Sheet12 sheet, Nameplate p) {
        SheetPage page = sheet.page();
        Amounts a = sheet.amounts();
        page.heading(c.say("plate.heading"));
        PairsInTwo pairs = new PairsInTwo(page, c);
        pairs.add("plate.maker", p.maker()).add("plate.type", p.type()).add("plate.serial", p.serial())
                .add("plate.year", a.count(p.year())).add("plate.duty", p.duty())
                .add("plate.apparentPower", a.with(p.apparentPowerVA(), 1000, "kVA"))
                .add("plate.power", a.with(p.powerW(), 1000, "kW")).add("plate.voltage", a.with(p.voltageV(), "V"))
                .add("plate.connection", p.connection()).add("plate.current", a.with(p.currentA(), "A"))
                .add("plate.frequency", a.with(p.frequencyHz(), "Hz")).add("plate.speed", a.with(p.speedRpm(), "r/min"))
                .add("plate.phases", a.count(p.phases())).add("plate.poles", a.count(p.poles()))
                .add("plate.powerFactor", p.powerFactor() == null ? "" : Amounts.number(p.powerFactor(), 4))
                .add("plate.excitationV", a.with(p.excitationV(), "V dc")).add("plate.excitationA", a.with(p.excitationA(), "A dc"))
                .add("plate.mainFieldV", a.with(p.mainFieldV(), "V dc")).add("plate.mainFieldA", a.with(p.mainFieldA(), "A dc"))
                .add("plate.thermalClass", p.thermalClass()).add("plate.riseLimit", p.riseLimit())
                .add("plate.ip", p.ip()).add("plate.ic", p.ic()).add("plate.im", p.im())
                .add("plate.ambient", a.with(p.ambientCelsius(), "°C"))
                .add("plate.minAmbient", a.with(p.minAmbientCelsius(), "°C")).add("plate.altitude", a.with(p.altitudeM(), "m"))
                .add("plate.mass", a.with(p.massKg(), "kg")).add("plate.shaftHeight", a.with(p.shaftHeightMm(), "mm"))
                .add("plate.bearingDE", p.bearingDE()).add("plate.bearingNDE", p.bearingNDE())
                .add("plate.regulator", p.regulator()).add("plate.leads", a.count(p.leads()))
                .add("plate.marks", c.words().of(p.marks())).add("plate.standard", p.standard())
                .add("plate.rotation", p.rotation()).add("plate.overspeed", a.with(p.overspeedRpm(), "r/min"))
                .add("plate.coolant", a.with(p.coolantCelsius(), "°C")).add("plate.rotorV", a.with(p.rotorV(), "V"))
                .add("plate.rotorA", a.with(p.rotorA(), "A")).add("plate.inertia", a.with(p.inertiaKgM2(), "kg m²"));
        pairs.done();
        makersLimits(c, sheet, p);
        ratings(c, sheet, p);
        String fields = "plate.field.";
        new VerdictRows(c, sheet).write(c.verdicts().all().stream().filter(v -> v.id().startsWith(fields)).toList());
    }

    /** Every rating of the plate in a line, and under it what its figures contradict. */
    private static void ratings(RecordContext c, Sheet12 sheet, Nameplate p) {
        SheetPage page = sheet.page();
        page.heading(c.say("plate.ratings"));
        Table table = new Table(page, 1, 3, 2, 2, 2, 2).head(c.say("plate.rating"), c.say("plate.connection"),
                c.say("plate.voltage"), c.say("plate.output"), c.say("plate.current"), c.say("plate.frequencySpeed"));
        rating(c, sheet, table, 0, new Nameplate.Rating(p.apparentPowerVA(), p.powerW(), p.voltageV(), p.connection(), p.currentA(),
                p.frequencyHz(), p.speedRpm(), p.powerFactor(), null), p);
        for (int i = 0; i < p.otherRatings().size(); i++) {
            rating(c, sheet, table, i + 1, p.otherRatings().get(i), p);
        }
        if (PlateWords.of(p, kind(c)).size() == 1 && IntStream.rangeClosed(0, p.otherRatings().size())
                .allMatch(i -> PlateWords.of(p, kind(c), i).isEmpty())) {
            page.note(PlateWords.of(p, kind(c)).get(0));
        }
    }

    private static void rating(RecordContext c, Sheet12 sheet, Table table, int index, Nameplate.Rating r, Nameplate p) {
        Amounts a = sheet.amounts();
        table.texts(Integer.toString(index + 1), r.connection(), a.with(r.voltageV(), "V"), RecordContext.joined(", ",
                a.with(r.apparentPowerVA(), 1000, "kVA"), a.with(r.powerW(), 1000, "kW"), r.powerFactor() == null ? ""
                        : "cos φ " + Amounts.number(r.powerFactor(), 4)), a.with(r.currentA(), "A"),
                RecordContext.joined(", ", a.with(r.frequencyHz(), "Hz"), a.with(r.speedRpm(), "r/min")));
        PlateWords.of(p, kind(c), index).forEach(sheet.page()::note);
    }

    /** What the machine was booked in as, or null. */
    private static MachineKind kind(RecordContext c) {
        return c.job().booking().map(Booking::machineKind).orElse(null);
    }
}

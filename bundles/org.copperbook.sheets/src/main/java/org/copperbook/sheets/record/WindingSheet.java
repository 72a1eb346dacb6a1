package org.copperbook.sheets.record;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;

/** One winding, as found beside as wound. */
public final class WindingSheet implements RecordSheet {

    private final WindingRole role;

    public WindingSheet(WindingRole role) {
        this.role = role;
    }

    @Override
    public void write(RecordContext c, Book book) {
        Optional<WindingData> found = c.job().windingAsFound(role);
        Optional<WindingData> wound = c.job().windingAsWound(role);
        if (found.isEmpty() && wound.isEmpty()) {
            return;
        }
        Sheet12 sheet = Sheet12.portrait(c, book, c.words().of(role));
        data(c, sheet, found.orElse(null), wound.orElse(null));
        found.ifPresent(w -> details(c, sheet, PartKey.windingAsFound(role), w, c.say("winding.asFound")));
        wound.ifPresent(w -> details(c, sheet, PartKey.windingAsWound(role), w, c.say("winding.asWound")));
    }

    private static void data(RecordContext c, Sheet12 sheet, WindingData found, WindingData wound) {
        Amounts a = sheet.amounts();
        SheetPage page = sheet.page();
        page.heading(c.say("winding.data"));
        Table table = found != null && wound != null
                ? new Table(page, 4, 4, 4).head(c.say("winding.item"), c.say("winding.asFound"), c.say("winding.asWound"))
                : new Table(page, 4, 8).head(c.say("winding.item"), c.say(found != null ? "winding.asFound" : "winding.asWound"));
        Both both = new Both(c, table, found, wound);
        both.row("winding.slots", w -> a.count(w.slots())).row("winding.poles", w -> a.count(w.poles()))
                .row("winding.phases", w -> w.role().isField() ? "" : a.count(w.phases()))
                .row("winding.layers", w -> a.count(w.layers())).row("winding.coilType", w -> c.words().of(w.coilType()))
                .row("winding.coilCount", w -> a.count(w.coilCount())).row("winding.coilsPerGroup", w -> a.count(w.coilsPerGroup()))
                .row("winding.groupsPerPhase", w -> a.count(w.groupsPerPhase())).row("winding.groupSequence", WindingData::groupSequence)
                .row("winding.span", WindingData::span).row("winding.turns", w -> a.count(w.turnsPerCoil()))
                .row("winding.wire", w -> wires(c, w.wire())).row("winding.conductor", w -> c.words().of(w.conductor()))
                .row("winding.circuits", w -> a.count(w.circuits())).row("winding.connection", w -> c.words().of(w.connection()))
                .row("winding.leads", w -> a.count(w.leads())).row("winding.jumper", WindingData::jumper)
                .row("winding.leadExit", w -> RecordContext.joined(", ", w.leadExit(), a.millimetres(w.leadLengthM())))
                .row("winding.polarity", WindingData::polaritySequence).row("winding.meanTurn", w -> a.millimetres(w.meanTurnM()))
                .row("winding.overhangDE", w -> a.millimetres(w.overhangDEM())).row("winding.overhangNDE", w -> a.millimetres(w.overhangNDEM()))
                .row("winding.coreLength", w -> a.millimetres(w.coreLengthM())).row("winding.bore", w -> a.millimetres(w.boreM()))
                .row("winding.outside", w -> a.millimetres(w.outsideM())).row("winding.slotDepth", w -> a.millimetres(w.slotDepthM()))
                .row("winding.slotWidth", w -> RecordContext.joined(" / ", a.millimetres(w.slotWidthTopM()), a.millimetres(w.slotWidthBottomM())))
                .row("winding.tooth", w -> a.millimetres(w.toothWidthM())).row("winding.yoke", w -> a.millimetres(w.yokeDepthM()))
                .row("winding.vents", w -> w.ventCount() == null ? "" : RecordContext.joined(" × ", a.count(w.ventCount()), a.millimetres(w.ventWidthM())))
                .row("winding.skew", w -> w.skew() == null ? "" : Amounts.number(w.skew(), 4))
                .row("winding.slotInsulation", WindingData::slotInsulation).row("winding.wedge", WindingData::wedge)
                .row("winding.thermalClass", WindingData::thermalClass)
                .row("winding.copper", w -> a.with(w.copperRemovedKg(), "kg")).row("winding.proposedFrom", WindingData::proposedFrom)
                .row("winding.reason", WindingData::reason).row("note", WindingData::note)
                .row("winding.photos", w -> w.photos().isEmpty() ? "" : a.count(w.photos().size()));
        if (found != null && wound != null) {
            page.note(c.say("winding.boldDiffers"));
        }
    }

    /** Rows with one item of both windings; what neither states is left out, what differs is in bold. */
    private record Both(RecordContext c, Table table, WindingData found, WindingData wound) {

        Both row(String key, Function<WindingData, String> item) {
            String was = found == null ? "" : Objects.requireNonNullElse(item.apply(found), "");
            String is = wound == null ? "" : Objects.requireNonNullElse(item.apply(wound), "");
            if (found == null || wound == null) {
                if (!was.isBlank() || !is.isBlank()) {
                    table.texts(c.say(key), was + is);
                }
            } else if (!was.isBlank() || !is.isBlank()) {
                boolean differs = !was.isBlank() && !is.isBlank() && !was.equals(is);
                table.row(Entry.text(c.say(key)), Entry.text(was),
                        differs ? Entry.text(is).looks(Look.TABLE_STRONG) : Entry.text(is));
            }
            return this;
        }
    }

    private static String wires(RecordContext c, List<WireInHand> wires) {
        return wires.stream().map(w -> RecordContext.joined(", ", c.say("wire.inHand", w.strands(), w.size()),
                w.grade() == null ? "" : c.say("wire.grade", w.grade()),
                w.bareMm() == null ? "" : c.say("wire.bare", Amounts.number(w.bareMm(), 5)),
                w.coveredMm() == null ? "" : c.say("wire.covered", Amounts.number(w.coveredMm(), 5))))
                .collect(Collectors.joining("\n"));
    }

    private static void details(RecordContext c, Sheet12 sheet, PartKey part, WindingData w, String which) {
        new FigureRows(c, sheet).write(part, which);
        if (!w.groups().isEmpty()) {
            sheet.page().heading(c.say(w.role().isField() ? "group.poles" : "group.heading", which));
            groups(c, sheet, part, w.groups());
        }
        if (!w.readings().isEmpty()) {
            sheet.page().heading(c.say("winding.readings", which));
            new ReadingsTable(c, sheet).all(part, "/readings/", w.readings());
        }
        if (!w.counts().isEmpty()) {
            sheet.page().heading(c.say("count.heading", which));
            Table table = new Table(sheet.page(), 1, 3, 1, 7).head(c.say("count.no"), c.say("count.by"),
                    c.say("count.strands"), c.say("count.turns"));
            for (TurnCount n : w.counts()) {
                table.row(Entry.number(n.ordinal()).left(), Entry.text(c.whoAndWhen(n.by(), n.at())), Entry.number(n.strands()),
                        Entry.text(turns(c, n)));
            }
        }
    }

    private static String turns(RecordContext c, TurnCount n) {
        if (n.groups().isEmpty()) {
            return c.say("count.covered");
        }
        if (n.groups().size() > 1 && n.groups().stream().map(TurnCount.GroupTurns::turns).distinct().count() == 1) {
            return c.say("count.everyGroup", n.groups().size(), n.groups().get(0).turns().stream()
                    .map(String::valueOf).collect(Collectors.joining(" ")));
        }
        return n.groups().stream().map(g -> g.group() + ": " + g.turns().stream().map(t -> t == null ? "?" : t.toString())
                .collect(Collectors.joining(" "))).collect(Collectors.joining("   "));
    }

    private static void groups(RecordContext c, Sheet12 sheet, PartKey part, List<CoilGroup> groups) {
        Table table = new Table(sheet.page(), 1, 1, 4, 2, 1, 2, 1).head(c.say("group.no"), c.say("group.phase"),
                c.say("group.coils"), c.say("group.resistance"), c.say("reading.celsius"), c.say("verdict.bar"),
                c.say("verdict.word"));
        for (int i = 0; i < groups.size(); i++) {
            CoilGroup g = groups.get(i);
            Optional<Verdict> verdict = c.verdicts().beside(part, "/groups/" + i + "/resistance");
            String wire = g.wire().isEmpty() ? "" : wires(c, g.wire());
            String resistance = g.resistance() == null ? ""
                    : sheet.amounts().observed(g.resistance().observed(), g.resistance().quantity());
            int row = table.row(Entry.number(g.number()).left(), Entry.text(RecordContext.joined(" ", g.phase(),
                    g.circuit() == null ? "" : g.circuit().toString(), Boolean.TRUE.equals(g.reversed()) ? "↔" : "")),
                    Entry.text(RecordContext.joined("\n", coils(c, g.coils()), wire)), Entry.text(resistance),
                    Entry.number(g.resistance() == null ? null : g.resistance().windingCelsius(), 1), Entry.blank(),
                    Entry.text(sheet.word(verdict)).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(5), table.span(5), verdict);
        }
        sheet.page().note(c.say("group.legend"));
    }

    /** The coils of a group; turns are said once when all have the same. */
    private static String coils(RecordContext c, List<CapturedCoil> coils) {
        boolean alike = coils.size() > 1 && coils.stream().allMatch(x -> x.goSlot() != null && x.turns() != null
                && x.turns().equals(coils.get(0).turns()));
        if (!alike) {
            return coils.stream().map(x -> coil(c, x)).collect(Collectors.joining(", "));
        }
        return coils.stream().map(x -> coil(c, new CapturedCoil(x.goSlot(), x.returnSlot(), null, x.reversed(), x.more())))
                .collect(Collectors.joining(", ")) + ": " + c.say("coil.turns", coils.get(0).turns());
    }

    private static String coil(RecordContext c, CapturedCoil coil) {
        String slots = coil.goSlot() == null ? "" : coil.goSlot() + "–" + (coil.returnSlot() == null ? "?" : coil.returnSlot());
        String turns = coil.turns() == null ? "" : c.say("coil.turns", coil.turns());
        return RecordContext.joined(": ", slots, turns) + (Boolean.TRUE.equals(coil.reversed()) ? " ↔" : "");
    }
}

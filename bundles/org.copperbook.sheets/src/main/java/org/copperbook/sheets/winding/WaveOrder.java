package org.copperbook.sheets.winding;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingData.CoilType;
import org.copperbook.sheets.winding.SlotTable.Placed;

/**
 * How the path of a wave winding runs from coil to coil. It follows from the coil list when each group lists its coils
 * in the order of the path: every coil then begins about a pole pair beyond the one before.
 */
final class WaveOrder {

    /** A path moves on by a pole pair, give or take the slot by which it closes and half a slot of a fractional winding. */
    private static final double CLOSING = 1.5;

    private final WindingData data;
    private final SlotTable table;

    WaveOrder(WindingData data, SlotTable table) {
        this.data = data;
        this.table = table;
    }

    boolean isWave() {
        return data.coilType() == CoilType.WAVE;
    }

    /** Whether the coil list says how each coil is joined to the next. */
    boolean isDrawn() {
        return hasPoles() && unclear().isEmpty();
    }

    boolean hasPoles() {
        return data.poles() != null && data.poles() > 0;
    }

    /** Groups whose coils do not follow one another as a wave does. */
    List<CoilGroup> unclear() {
        return table.groups().stream().filter(g -> !follows(table.coils(g))).toList();
    }

    private boolean follows(List<Placed> coils) {
        for (int i = 1; i < coils.size(); i++) {
            Placed before = coils.get(i - 1);
            double on = Math.abs(table.span(before)) + step(before, coils.get(i));
            if (way(coils.get(i)) != way(before) || Math.abs(on - polePair()) > CLOSING) {
                return false;
            }
        }
        return true;
    }

    private double polePair() {
        return 2.0 * table.slots() / data.poles();
    }

    /** The way round that the path goes through a coil: 1 with the slot numbers, -1 against them. */
    int way(Placed c) {
        return table.span(c) > 0 == c.reversed() ? -1 : 1;
    }

    int entrySlot(Placed c) {
        return c.reversed() ? c.back() : c.go();
    }

    int entryLayer(Placed c) {
        return c.reversed() ? c.backLayer() : c.goLayer();
    }

    int exitSlot(Placed c) {
        return c.reversed() ? c.go() : c.back();
    }

    int exitLayer(Placed c) {
        return c.reversed() ? c.goLayer() : c.backLayer();
    }

    /** Slots from the end of one coil on to the beginning of the next, the way the path goes. */
    int step(Placed before, Placed next) {
        return Math.floorMod(way(before) * (entrySlot(next) - exitSlot(before)), table.slots());
    }

    /** Slots by which the first and the last end of a group lean outwards: half of what a coil leaves of a pole pair. */
    double lean(Placed c) {
        return way(c) * Math.max(0.5, (polePair() - Math.abs(table.span(c))) / 2);
    }

    /**
     * Slots by which the path has moved on (progressive) or stayed back (retrogressive, negative) after each time round;
     * empty when no group goes round once, or when they differ.
     */
    OptionalInt creep() {
        int round = data.poles() / 2;
        List<Integer> creeps = table.groups().stream().map(table::coils).flatMap(coils ->
                IntStream.range(0, Math.max(0, coils.size() - round))
                        .mapToObj(i -> creep(coils.get(i), coils.get(i + round)))).filter(slots -> slots != 0).distinct().toList();
        return creeps.size() == 1 ? OptionalInt.of(creeps.get(0)) : OptionalInt.empty();
    }

    private int creep(Placed from, Placed to) {
        int moved = Math.floorMod(way(from) * (entrySlot(to) - entrySlot(from)), table.slots());
        return moved > table.slots() / 2 ? moved - table.slots() : moved;
    }
}

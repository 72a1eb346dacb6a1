package org.copperbook.calc.winding;

import java.util.List;
import org.copperbook.calc.Require;

/**
 * The short description from which a coil list is made.
 *
 * @param slots slots Q
 * @param poles poles 2p
 * @param phases phases m
 * @param layers 1 or 2
 * @param layout lap or concentric
 * @param grouping groups per phase; two-layer windings have a group per pole
 * @param spans coil spans in slots (a coil 1-9 has span 8). One number for lap coils; for concentric coils the spans of
 *     the largest group from the outer coil to the inner one, each two less than the one before, or one number, the
 *     mean span
 * @param groupSizes coils per group in order around the bore, repeated as often as needed; empty to let the star of
 *     slots decide
 * @param turns turns per coil: one number for all coils, or one for each place in the largest group (outer coil first)
 * @param firstSlot slot of the first coil side of the first phase, from 1
 */
public record WindingPlan(int slots, int poles, int phases, int layers, CoilLayout layout, Grouping grouping,
        List<Integer> spans,
        List<Integer> groupSizes, List<Double> turns, int firstSlot) {
    public WindingPlan {
        spans = List.copyOf(spans);
        groupSizes = List.copyOf(groupSizes);
        turns = List.copyOf(turns);
        Require.between("slots", slots, 3, 1000, "a distributed winding needs at least three");
        Require.between("poles", Require.poles(poles), 2, 200, "machines of this trade have no more");
        Require.between("phases", phases, 1, 12, "machines of this trade have no more");
        Require.that(!spans.isEmpty() && spans.stream().allMatch(span -> span >= 1 && span < slots), "coil spans",
                spans.toString(), "1 to " + (slots - 1) + " slots", "a coil ends in another slot of the machine");
        for (int i = 1; i < spans.size(); i++) {
            Require.that(spans.get(i) == spans.get(i - 1) - 2, "concentric spans", spans.toString(),
                    "spans falling by two from coil to coil", "each coil lies inside the one before");
        }
        Require.that(layout == CoilLayout.CONCENTRIC || spans.size() == 1, "spans of lap coils", spans.toString(),
                "one span",
                "lap coils are all of one size");
        Require.that(groupSizes.stream().allMatch(size -> size >= 0), "coils per group", groupSizes.toString(),
                "the whole numbers from 0", "a group cannot lack coils it never had");
        Require.that(!turns.isEmpty(), "turns per coil", "(nothing)", "one number, or one for each place",
                "a coil has turns");
        Require.between("first slot", firstSlot, 1, slots, "the machine has no further slot");
        Require.that(layers == 1 || grouping == Grouping.GROUP_PER_POLE, "grouping", "a group per pole pair",
                "a group per pole", "the groups of a two-layer winding follow the poles");
    }

    /**
     * A two-layer lap winding whose grouping follows from the star of slots.
     *
     * @param slots slots
     * @param poles poles
     * @param phases phases
     * @param span coil span in slots
     * @param turns turns per coil
     * @return the description
     */
    public static WindingPlan doubleLayerLap(int slots, int poles, int phases, int span, double turns) {
        return new WindingPlan(slots, poles, phases, 2, CoilLayout.LAP, Grouping.GROUP_PER_POLE, List.of(span),
                List.of(),
                List.of(turns), 1);
    }

    /**
     * A single-layer winding whose grouping follows from the star of slots.
     *
     * @param slots slots
     * @param poles poles
     * @param phases phases
     * @param layout lap or concentric
     * @param grouping a group per pole or per pole pair
     * @param spans coil spans in slots
     * @param turns turns per coil
     * @return the description
     */
    public static WindingPlan singleLayer(int slots, int poles, int phases, CoilLayout layout, Grouping grouping,
            List<Integer> spans, double turns) {
        return new WindingPlan(slots, poles, phases, 1, layout, grouping, spans, List.of(), List.of(turns), 1);
    }

    /** @return mean span in slots: what the group has in the middle */
    double meanSpan() {
        return spans.stream().mapToInt(Integer::intValue).average().orElseThrow();
    }

    /**
     * @param place place in the group from 0, outer coil first
     * @return turns of that coil
     */
    double turnsAt(int place) {
        if (turns.size() == 1) {
            return turns.get(0);
        }
        Require.between("place in the group", place + 1, 1, turns.size(), "turns are given for so many places only");
        return turns.get(place);
    }
}

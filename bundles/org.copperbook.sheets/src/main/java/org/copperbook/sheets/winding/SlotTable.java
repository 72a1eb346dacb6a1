package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;

/** Where every captured coil side lies: slot and layer. Coils whose slots are missing or outside the core are left out. */
final class SlotTable {

    /**
     * A coil in its slots.
     *
     * @param number   place of the coil in its group, from 1
     * @param goLayer  layer of the go side, 1 at the bore; above the number of layers when the slot is overfull
     * @param reversed whether the coil is wound against the sense of its group
     * @param forward  whether current entering its phase at the first lead enters this coil at its go side
     */
    record Placed(CoilGroup group, int number, int go, int goLayer, int back, int backLayer, boolean reversed,
            boolean forward) {

        String id() {
            return "group/" + group.number() + "/coil/" + number;
        }
    }

    private final int slots;
    private final int layers;
    private final List<Placed> coils = new ArrayList<>();
    private final List<CoilGroup> groups = new ArrayList<>();
    private final Map<Integer, List<Integer>> taken = new HashMap<>();
    private int leftOut;

    SlotTable(WindingData data) {
        slots = data.slots() == null ? 0 : data.slots();
        layers = data.layers() != null ? Math.min(2, Math.max(1, data.layers())) : mostSides(data) > 1 ? 2 : 1;
        for (CoilGroup g : data.groups()) {
            int before = coils.size();
            for (int i = 0; i < g.coils().size(); i++) {
                place(g, i + 1, g.coils().get(i));
            }
            if (coils.size() > before) {
                groups.add(g);
            }
        }
    }

    private void place(CoilGroup g, int number, CapturedCoil c) {
        if (!inCore(c.goSlot()) || !inCore(c.returnSlot()) || c.goSlot().equals(c.returnSlot())) {
            leftOut++;
            return;
        }
        boolean reversed = Boolean.TRUE.equals(c.reversed());
        coils.add(new Placed(g, number, c.goSlot(), layer(c.goSlot(), 1), c.returnSlot(), layer(c.returnSlot(), layers),
                reversed, Boolean.TRUE.equals(g.reversed()) == reversed));
    }

    private boolean inCore(Integer slot) {
        return slot != null && slot >= 1 && slot <= slots;
    }

    private int layer(int slot, int wanted) {
        List<Integer> here = taken.computeIfAbsent(slot, s -> new ArrayList<>());
        int layer = here.contains(wanted) ? 1 : wanted;
        while (here.contains(layer)) {
            layer++;
        }
        here.add(layer);
        return layer;
    }

    private static long mostSides(WindingData data) {
        Map<Integer, Integer> sides = new HashMap<>();
        data.groups().stream().flatMap(g -> g.coils().stream()).forEach(c -> {
            if (c.goSlot() != null && c.returnSlot() != null) {
                sides.merge(c.goSlot(), 1, Integer::sum);
                sides.merge(c.returnSlot(), 1, Integer::sum);
            }
        });
        return sides.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    int slots() {
        return slots;
    }

    int layers() {
        return layers;
    }

    /** Most sides that any slot holds. */
    int deepest() {
        return Math.max(layers, taken.values().stream().flatMap(List::stream).mapToInt(i -> i).max().orElse(1));
    }

    List<Placed> coils() {
        return coils;
    }

    List<Placed> coils(CoilGroup group) {
        return coils.stream().filter(c -> c.group() == group).toList();
    }

    /** Groups with at least one coil in its slots, in captured order. */
    List<CoilGroup> groups() {
        return groups;
    }

    int leftOut() {
        return leftOut;
    }

    /** Slots that hold more sides than the winding has layers. */
    List<Integer> overfull() {
        return taken.entrySet().stream().filter(e -> e.getValue().size() > layers).map(Map.Entry::getKey).sorted().toList();
    }

    /** Slots that hold fewer sides than the winding has layers. */
    int sidesMissing() {
        int missing = 0;
        for (int s = 1; s <= slots; s++) {
            missing += Math.max(0, layers - taken.getOrDefault(s, List.of()).size());
        }
        return missing;
    }

    /** Slots from the go side on to the return side, the shorter way round: negative for backwards. */
    int span(Placed coil) {
        int ahead = Math.floorMod(coil.back() - coil.go(), slots);
        return ahead > slots / 2 ? ahead - slots : ahead;
    }

    int longestSpan() {
        return coils.stream().mapToInt(c -> Math.abs(span(c))).max().orElse(1);
    }
}

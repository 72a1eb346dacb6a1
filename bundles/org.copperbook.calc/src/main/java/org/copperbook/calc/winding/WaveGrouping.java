package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.copperbook.calc.Require;

/** The coils of a two-layer winding grouped as a wave joins them. */
public final class WaveGrouping {
    private WaveGrouping() {
    }

    /**
     * Puts the coils of each phase and sense into one group, in the order of a progressive path: a pole pair on from coil
     * to coil, and after each time round one slot further. The group of the other sense is connected against the first.
     *
     * @param winding two-layer winding with a group per pole, all groups of one size
     * @return the same coils; groups numbered by the slot in which they begin
     */
    public static Winding progressive(Winding winding) {
        Require.that(winding.layers() == 2, "layers of a wave winding", Integer.toString(winding.layers()), "two",
                "its coils pass from one layer to the other");
        List<List<Coil>> groups = winding.groups().stream().map(winding::coilsOfGroup).toList();
        int size = groups.get(0).size();
        Require.that(groups.stream().allMatch(group -> group.size() == size), "coils per pole and phase",
                Double.toString(winding.slotsPerPoleAndPhase()), "a whole number",
                "only then the path follows from the description; list the coils in the order of the path instead");
        List<List<Coil>> paths = new ArrayList<>();
        for (int phase = 1; phase <= winding.phases(); phase++) {
            for (int sense : new int[] {1, -1}) {
                int of = phase;
                List<List<Coil>> along = groups.stream()
                        .filter(group -> group.get(0).phase() == of && group.get(0).sense() == sense).toList();
                paths.add(IntStream.range(0, size).boxed().flatMap(i -> along.stream().map(group -> group.get(i))).toList());
            }
        }
        paths.removeIf(List::isEmpty);
        paths.sort(Comparator.comparingInt(path -> path.get(0).goSlot()));
        List<Coil> coils = new ArrayList<>();
        for (int g = 0; g < paths.size(); g++) {
            for (Coil coil : paths.get(g)) {
                coils.add(new Coil(coil.phase(), g + 1, coil.goSlot(), coil.returnSlot(), coil.turns(), coil.sense()));
            }
        }
        return new Winding(winding.slots(), winding.poles(), winding.phases(), 2, coils);
    }
}

package org.copperbook.winding.count;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.WindingData;

/**
 * One coil to count.
 *
 * @param group      number of its group
 * @param phase      phase of the group, or null
 * @param coil       place of the coil in its group, from 1
 * @param coils      coils that the group has
 * @param goSlot     slot of its go side, or null
 * @param returnSlot slot of its return side, or null
 */
public record CountPlace(int group, String phase, int coil, int coils, Integer goSlot, Integer returnSlot) {

    /**
     * The coils that a count goes through, in their order round the bore; never their turns. A third count goes through
     * the groups that the first two differ in.
     *
     * @param ordinal number of the count
     */
    public static List<CountPlace> of(WindingData winding, int ordinal) {
        Set<Integer> differing = CountComparison.of(winding.counts().stream()
                .filter(c -> c.ordinal() < ordinal).toList()).open().stream()
                .map(CountComparison.Difference::group).collect(Collectors.toSet());
        List<CountPlace> places = new ArrayList<>();
        for (CoilGroup g : winding.groups()) {
            if (ordinal < 3 || differing.contains(g.number())) {
                for (int i = 0; i < g.coils().size(); i++) {
                    CapturedCoil c = g.coils().get(i);
                    places.add(new CountPlace(g.number(), g.phase(), i + 1, g.coils().size(), c.goSlot(),
                            c.returnSlot()));
                }
            }
        }
        return places;
    }

    /** Whether a count has to state the strands in hand: always, but a third only when the first two differ there. */
    public static boolean strands(WindingData winding, int ordinal) {
        return ordinal < 3 || CountComparison.of(winding.counts().stream().filter(c -> c.ordinal() < ordinal).toList())
                .open().stream().anyMatch(d -> d.coil() == CountComparison.STRANDS);
    }
}

package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;

class WaveGroupingTest {

    /**
     * A path is progressive when after once round the armature it comes in one slot to the right of where it began (B. L.
     * Theraja, A. K. Theraja, A Textbook of Electrical Technology, ch. 26, simplex wave winding).
     */
    @Test
    void eachPathMovesOnByAPolePairAndOneSlotAfterEachTimeRound() {
        Winding lap = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 6, 3, 6, 4));
        Winding wave = WaveGrouping.progressive(lap);
        assertEquals(List.of(1, 2, 3, 4, 5, 6), wave.groups());
        for (int group : wave.groups()) {
            List<Coil> path = wave.coilsOfGroup(group);
            assertEquals(1, path.stream().map(c -> List.of(c.phase(), c.sense())).distinct().count());
            for (int i = 1; i < path.size(); i++) {
                int on = Math.floorMod(path.get(i).goSlot() - path.get(i - 1).goSlot(), 36);
                assertEquals(i % 3 == 0 ? 13 : 12, on, "group " + group + ", coil " + (i + 1));
            }
        }
        assertEquals(places(lap), places(wave), "the same coils in the same slots");
    }

    private static Set<String> places(Winding w) {
        Set<String> places = w.coils().stream().map(c -> c.phase() + ": " + c.goSlot() + "-" + c.returnSlot() + " " + c.sense())
                .collect(Collectors.toCollection(HashSet::new));
        assertEquals(w.coils().size(), places.size());
        return places;
    }

    @Test
    void aPathThatTheDescriptionDoesNotGiveIsRefused() {
        Winding fractional = WindingGenerator.generate(WindingPlan.doubleLayerLap(27, 6, 3, 4, 4));
        OutOfRange refused = assertThrows(OutOfRange.class, () -> WaveGrouping.progressive(fractional));
        assertTrue(refused.getMessage().contains("list the coils in the order of the path"), refused.getMessage());
        Winding oneLayer = WindingGenerator.generate(WindingPlan.singleLayer(24, 4, 3, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE, List.of(5), 10));
        assertThrows(OutOfRange.class, () -> WaveGrouping.progressive(oneLayer));
    }
}

package org.copperbook.calc.winding.capture;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What would tell slips apart that the readings cannot (common practice). */
final class PartingTests {
    private PartingTests() {
    }

    static List<String> of(List<Slip> slips) {
        if (slips.size() < 2) {
            return List.of();
        }
        Set<String> tests = new LinkedHashSet<>();
        boolean turn = slips.stream().anyMatch(Slip.Turn.class::isInstance);
        boolean shorted = slips.stream().anyMatch(Slip.ShortedTurn.class::isInstance);
        boolean strands = slips.stream().anyMatch(Slip.Strands.class::isInstance);
        boolean gauge = slips.stream().anyMatch(Slip.Gauge.class::isInstance);
        boolean hot = slips.stream().anyMatch(Slip.HotReading.class::isInstance);
        if (turn && shorted) {
            tests.add("surge comparison against a sister group, or cut one coil and count");
        }
        if (groups(slips) > 1) {
            tests.add("read each coil group by itself");
        }
        if (slips.stream().anyMatch(Slip.TurnInEveryCoil.class::isInstance)) {
            tests.add("cut two coils of different groups and count their turns");
        }
        if (strands || gauge) {
            tests.add("count the strands at a cut end and gauge three of them with a micrometer");
        }
        if (hot) {
            tests.add("let the winding stand until it has the temperature of the room and read it again");
            tests.add("weigh the copper taken out");
        }
        if (slips.stream().anyMatch(Slip.Circuits.class::isInstance)) {
            tests.add("trace the jumpers of one phase");
        }
        if (tests.isEmpty()) {
            tests.add("count one coil again and gauge its wire");
        }
        return new ArrayList<>(tests);
    }

    private static long groups(List<Slip> slips) {
        return slips.stream().map(PartingTests::group).filter(g -> g > 0).distinct().count();
    }

    private static int group(Slip slip) {
        if (slip instanceof Slip.Turn turn) {
            return turn.group();
        }
        return slip instanceof Slip.ShortedTurn shorted ? shorted.group() : 0;
    }
}

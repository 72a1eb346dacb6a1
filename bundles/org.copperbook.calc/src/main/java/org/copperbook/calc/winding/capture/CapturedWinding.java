package org.copperbook.calc.winding.capture;

import java.util.Map;
import org.copperbook.calc.Require;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;

/**
 * A winding as it was counted, gauged and traced.
 *
 * @param winding coil list
 * @param plan circuits of each phase
 * @param bundle strands in hand of one circuit
 * @param meanTurn mean length of turn in m
 * @param celsius winding temperature at the readings in C
 * @param meanTurnBySpan mean length of turn in m of the coils of a span, where concentric coils were measured one by
 *     one; spans not named have the mean length of turn above
 */
public record CapturedWinding(Winding winding, CircuitPlan plan, ConductorBundle bundle, double meanTurn,
        double celsius, Map<Integer, Double> meanTurnBySpan) {
    public CapturedWinding {
        checkLength(meanTurn);
        meanTurnBySpan = Map.copyOf(meanTurnBySpan);
        meanTurnBySpan.values().forEach(CapturedWinding::checkLength);
        Require.between("winding temperature", celsius, -40, 200, "C", "a winding at rest lies in this range");
    }

    /**
     * A winding whose coils are all of one length.
     *
     * @param winding coil list
     * @param plan circuits of each phase
     * @param bundle strands in hand of one circuit
     * @param meanTurn mean length of turn in m
     * @param celsius winding temperature at the readings in C
     */
    public CapturedWinding(Winding winding, CircuitPlan plan, ConductorBundle bundle, double meanTurn, double celsius) {
        this(winding, plan, bundle, meanTurn, celsius, Map.of());
    }

    private static void checkLength(double metres) {
        Require.between("mean length of turn", Require.positive("mean length of turn", metres, "m"), 0, 20, "m",
                "no machine of this trade has a longer turn");
    }

    /**
     * @param coil coil of the winding
     * @return its mean length of turn in m
     */
    public double meanTurnOf(Coil coil) {
        return meanTurnBySpan.getOrDefault(coil.span(winding.slots()), meanTurn);
    }
}

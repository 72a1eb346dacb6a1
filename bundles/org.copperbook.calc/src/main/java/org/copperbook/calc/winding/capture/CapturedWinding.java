package org.copperbook.calc.winding.capture;

import org.copperbook.calc.Require;
import org.copperbook.calc.winding.CircuitPlan;
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
 */
public record CapturedWinding(Winding winding, CircuitPlan plan, ConductorBundle bundle, double meanTurn,
        double celsius) {
    public CapturedWinding {
        Require.between("mean length of turn", Require.positive("mean length of turn", meanTurn, "m"), 0, 20, "m",
                "no machine of this trade has a longer turn");
        Require.between("winding temperature", celsius, -40, 200, "C", "a winding at rest lies in this range");
    }
}

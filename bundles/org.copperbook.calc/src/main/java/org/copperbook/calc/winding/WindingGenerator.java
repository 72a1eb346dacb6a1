package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * Makes the coil list of a regular winding from its short description.
 *
 * <p>Where no grouping is given the star of slots decides: the electrical circle is cut into {@code 2m} belts in the
 * order U, -W, V, -U, W, -V (any textbook on a.c. machines, for instance Chapman, Electric Machinery Fundamentals, app.
 * B) and every slot joins the belt its phasor falls in. The whole is done in whole numbers, so that no slot on an edge
 * is lost to rounding.
 */
public final class WindingGenerator {
    private WindingGenerator() {
    }

    /**
     * @param plan short description
     * @return the winding it describes
     * @throws org.copperbook.calc.OutOfRange when slots, spans and grouping contradict each other
     */
    public static Winding generate(WindingPlan plan) {
        List<Coil> coils = plan.layers() == 2 ? doubleLayer(plan) : new SingleLayer(plan).coils();
        Winding winding = new Winding(plan.slots(), plan.poles(), plan.phases(), plan.layers(), coils);
        List<String> findings = winding.findings();
        Require.that(findings.isEmpty(), "winding plan", plan.slots() + " slots, spans " + plan.spans(),
                "the plans that fill every slot", findings.isEmpty() ? "" : findings.get(0));
        return winding;
    }

    private static List<Coil> doubleLayer(WindingPlan plan) {
        List<BeltRun> runs = plan.groupSizes().isEmpty() ? runsFromStar(plan) : runsFromSizes(plan);
        List<Coil> coils = new ArrayList<>();
        int group = 0;
        for (BeltRun run : runs) {
            if (run.length() == 0) {
                continue;
            }
            group++;
            for (int i = 0; i < run.length(); i++) {
                int place = place(plan, run.length(), i);
                coils.add(new Coil(run.belt().phase(), group, slot(plan, run.start() + i),
                        slot(plan, run.start() + i + span(plan, run.length(), i)), plan.turnsAt(place),
                        run.belt().sense()));
            }
        }
        return coils;
    }

    /** Span of the i-th coil of a group: equal for lap coils; concentric ones share the middle and shrink by two. */
    private static int span(WindingPlan plan, int size, int i) {
        if (plan.layout() == CoilLayout.LAP) {
            return plan.spans().get(0);
        }
        double span = plan.meanSpan() + size - 1 - 2.0 * i;
        Require.that(span == Math.rint(span) && span >= 1, "span of a concentric coil", Double.toString(span),
                "the whole numbers from 1", "the mean span of a group of " + size + " coils does not allow it");
        return (int) span;
    }

    /** A shorter group lacks its outermost coils first, so its coils keep the places nearest the middle. */
    private static int place(WindingPlan plan, int size, int i) {
        if (plan.turns().size() == 1) {
            return 0;
        }
        return plan.layout() == CoilLayout.LAP ? i : plan.turns().size() - size + i;
    }

    private static int slot(WindingPlan plan, int offset) {
        return Math.floorMod(plan.firstSlot() - 1 + offset, plan.slots()) + 1;
    }

    private static List<BeltRun> runsFromStar(WindingPlan plan) {
        List<BeltRun> runs = new ArrayList<>();
        int start = 0;
        Belt current = Belt.ofSlot(0, plan);
        for (int s = 1; s <= plan.slots(); s++) {
            Belt next = s == plan.slots() ? null : Belt.ofSlot(s, plan);
            if (!current.equals(next) || plan.slots() < plan.poles() * plan.phases()) {
                runs.add(new BeltRun(current, start, s - start));
                start = s;
                current = next;
            }
        }
        return runs;
    }

    private static List<BeltRun> runsFromSizes(WindingPlan plan) {
        List<BeltRun> runs = new ArrayList<>();
        int start = 0;
        for (int g = 0; g < plan.poles() * plan.phases(); g++) {
            int size = plan.groupSizes().get(g % plan.groupSizes().size());
            runs.add(new BeltRun(Belt.inOrder(g, plan.phases()), start, size));
            start += size;
        }
        Require.that(start == plan.slots(), "group sizes " + plan.groupSizes(), start + " coils",
                "the " + plan.slots() + " coils of a two-layer winding", "each slot holds one upper coil side");
        return runs;
    }

    /** Neighbouring coils of one group. */
    private record BeltRun(Belt belt, int start, int length) {
    }
}

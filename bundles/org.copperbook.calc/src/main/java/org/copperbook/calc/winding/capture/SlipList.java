package org.copperbook.calc.winding.capture;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.calc.wire.WireSizes;

/**
 * Lays out every single slip with its share of the prior probability. The shares are common practice without a source:
 * a miscount of turns is the commonest slip, a hot reading and a wrong gauge come next.
 */
final class SlipList {
    private static final double TURN_SHARE = 0.24;
    private static final double EVERY_COIL_SHARE = 0.10;
    private static final double SHORT_SHARE = 0.10;
    private static final double STRAND_SHARE = 0.14;
    private static final double GAUGE_SHARE = 0.18;
    private static final double CIRCUIT_SHARE = 0.10;
    private static final double HOT_SHARE = 0.14;
    private static final int COOLEST_SLIP = 10;
    private static final int HOTTEST_SLIP = 70;
    private static final int HOT_STEP = 4;

    private final CapturedWinding captured;
    private final List<CaptureReading> readings;
    private final Prediction prediction;
    private final double[] asCaptured;
    private final double slipProbability;
    private final List<Hypothesis> hypotheses = new ArrayList<>();

    private SlipList(CapturedWinding captured, List<CaptureReading> readings, Prediction prediction,
            double cleanProbability) {
        this.captured = captured;
        this.readings = readings;
        this.prediction = prediction;
        asCaptured = readings.stream().mapToDouble(prediction::asCaptured).toArray();
        slipProbability = 1 - cleanProbability;
        hypotheses.add(new Hypothesis(null, cleanProbability, new double[readings.size()]));
    }

    /** The clean capture first, then every slip. */
    static List<Hypothesis> of(CapturedWinding captured, List<CaptureReading> readings, Prediction prediction,
            double cleanProbability) {
        SlipList list = new SlipList(captured, readings, prediction, cleanProbability);
        list.turns();
        list.everyCoil();
        list.strands();
        list.gauges();
        list.circuits();
        list.hot();
        return list.hypotheses;
    }

    private void add(Slip slip, double share, int group, double turns, ConductorBundle bundle, CircuitPlan plan,
            double celsius) {
        double[] shift = new double[asCaptured.length];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = Math.log(prediction.of(readings.get(i), group, turns, bundle, plan, celsius) / asCaptured[i]);
        }
        hypotheses.add(new Hypothesis(slip, slipProbability * share, shift));
    }

    private void turns() {
        Winding winding = captured.winding();
        double coils = winding.coils().size();
        for (int group : winding.groups()) {
            double part = winding.coilsOfGroup(group).size() / coils;
            boolean canLose = winding.coilsOfGroup(group).stream().anyMatch(coil -> coil.turns() > 1);
            add(new Slip.Turn(group, 1), TURN_SHARE / 2 * part, group, 1, captured.bundle(), captured.plan(),
                    captured.celsius());
            if (canLose) {
                add(new Slip.Turn(group, -1), TURN_SHARE / 2 * part, group, -1, captured.bundle(), captured.plan(),
                        captured.celsius());
                addShort(group, SHORT_SHARE * part);
            }
        }
    }

    private void everyCoil() {
        boolean canLose = captured.winding().coils().stream().allMatch(coil -> coil.turns() > 1);
        for (int change = -1; change <= 1; change += 2) {
            if (change > 0 || canLose) {
                int turns = change;
                Winding winding = captured.winding();
                List<Coil> coils = winding.coils().stream().map(coil -> coil.withTurns(coil.turns() + turns)).toList();
                CapturedWinding other = new CapturedWinding(
                        new Winding(winding.slots(), winding.poles(), winding.phases(), winding.layers(), coils),
                        captured.plan(), captured.bundle(), captured.meanTurn(), captured.celsius(),
                        captured.meanTurnBySpan());
                Prediction changed = new Prediction(other);
                double[] shift = new double[asCaptured.length];
                for (int i = 0; i < shift.length; i++) {
                    shift[i] = Math.log(changed.asCaptured(readings.get(i)) / asCaptured[i]);
                }
                hypotheses.add(new Hypothesis(new Slip.TurnInEveryCoil(turns), slipProbability * EVERY_COIL_SHARE / 2,
                        shift));
            }
        }
    }

    /** A shorted turn takes its resistance away but leaves its copper in place. */
    private void addShort(int group, double share) {
        add(new Slip.ShortedTurn(group), share, group, -1, captured.bundle(), captured.plan(), captured.celsius());
        double[] shift = hypotheses.get(hypotheses.size() - 1).shift();
        for (int i = 0; i < shift.length; i++) {
            if (readings.get(i) instanceof CaptureReading.OfMass) {
                shift[i] = 0;
            }
        }
    }

    private void strands() {
        List<ConductorBundle.Strands> all = captured.bundle().strands();
        double share = STRAND_SHARE / 2 / all.size();
        for (int i = 0; i < all.size(); i++) {
            ConductorBundle.Strands some = all.get(i);
            for (int change = -1; change <= 1; change += 2) {
                if (some.count() + change >= 1) {
                    ConductorBundle other = with(i,
                            new ConductorBundle.Strands(some.count() + change, some.conductor()));
                    add(new Slip.Strands(some.conductor().label(), some.count() + change), share, 0, 0, other,
                            captured.plan(),
                            captured.celsius());
                }
            }
        }
    }

    private void gauges() {
        List<ConductorBundle.Strands> all = captured.bundle().strands();
        double share = GAUGE_SHARE / 2 / all.size();
        for (int i = 0; i < all.size(); i++) {
            ConductorBundle.Strands some = all.get(i);
            if (some.conductor() instanceof WireSize size) {
                for (int step = -1; step <= 1; step += 2) {
                    WireSize actual = WireSizes.neighbour(size, step);
                    if (!actual.equals(size)) {
                        add(new Slip.Gauge(size, actual), share, 0, 0,
                                with(i, new ConductorBundle.Strands(some.count(), actual)),
                                captured.plan(), captured.celsius());
                    }
                }
            }
        }
    }

    private ConductorBundle with(int index, ConductorBundle.Strands strands) {
        List<ConductorBundle.Strands> changed = new ArrayList<>(captured.bundle().strands());
        changed.set(index, strands);
        return new ConductorBundle(changed, captured.bundle().material());
    }

    private void circuits() {
        Winding winding = captured.winding();
        int now = captured.plan().of(1).size();
        List<Integer> others = CircuitPlan.possible(winding, 1).stream().filter(n -> n != now)
                .filter(n -> dividesEveryPhase(winding, n)).toList();
        for (int actual : others) {
            add(new Slip.Circuits(actual), CIRCUIT_SHARE / others.size(), 0, 0, captured.bundle(),
                    CircuitPlan.equal(winding, actual),
                    captured.celsius());
        }
    }

    private static boolean dividesEveryPhase(Winding winding, int circuits) {
        for (int phase = 1; phase <= winding.phases(); phase++) {
            if (winding.groupsOf(phase).size() % circuits != 0) {
                return false;
            }
        }
        return true;
    }

    private void hot() {
        int steps = (HOTTEST_SLIP - COOLEST_SLIP) / HOT_STEP + 1;
        for (int kelvin = COOLEST_SLIP; kelvin <= HOTTEST_SLIP; kelvin += HOT_STEP) {
            add(new Slip.HotReading(kelvin), HOT_SHARE / steps, 0, 0, captured.bundle(), captured.plan(),
                    captured.celsius() + kelvin);
        }
    }
}

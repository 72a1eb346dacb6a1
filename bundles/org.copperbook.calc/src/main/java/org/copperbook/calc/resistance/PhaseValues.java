package org.copperbook.calc.resistance;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.copperbook.calc.resistance.PhaseResult.Finding;
import org.copperbook.calc.resistance.PhaseResult.Inconsistent;
import org.copperbook.calc.resistance.PhaseResult.OpenLine;
import org.copperbook.calc.resistance.PhaseResult.OpenPhase;
import org.copperbook.calc.resistance.PhaseResult.Phase;
import org.copperbook.calc.resistance.PhaseResult.Reason;
import org.copperbook.calc.resistance.PhaseResult.ShortedPhase;
import org.copperbook.calc.resistance.PhaseResult.Sound;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * Phase resistances from the three readings between line terminals, for a star without neutral and for a delta.
 * Source: IEC 60034-2-1, 5.7 (star R_U = (R_UV + R_WU - R_VW)/2; delta
 * R = 2 R_VW R_WU/(R_VW + R_WU - R_UV) - (R_VW + R_WU - R_UV)/2, cyclic); circuit identities.
 *
 * <p>Never refuses a triple: a triple that no sound winding can give is a finding. The test is made with the coverage
 * factor 2.
 */
public final class PhaseValues {

    private static final double K = 2;
    private static final Phase[] PHASES = Phase.values();
    private static final TerminalPair[] PAIRS = TerminalPair.values();

    private PhaseValues() {
    }

    /** Phases of a star, readings independent of each other. */
    public static PhaseResult star(LineReading uv, LineReading vw, LineReading wu) {
        return star(uv, vw, wu, SharedTerms.NONE);
    }

    /** Phases of a star; the readings share the given terms. */
    public static PhaseResult star(LineReading uv, LineReading vw, LineReading wu, SharedTerms shared) {
        return classify(new LineReading[] {uv, vw, wu}, shared, true);
    }

    /** Phases of a delta, readings independent of each other. */
    public static PhaseResult delta(LineReading uv, LineReading vw, LineReading wu) {
        return delta(uv, vw, wu, SharedTerms.NONE);
    }

    /** Phases of a delta; the readings share the given terms. */
    public static PhaseResult delta(LineReading uv, LineReading vw, LineReading wu, SharedTerms shared) {
        return classify(new LineReading[] {uv, vw, wu}, shared, false);
    }

    private static PhaseResult classify(LineReading[] readings, SharedTerms shared, boolean star) {
        PhaseResult open = openPaths(readings, star);
        if (open != null) {
            return open;
        }
        SharedSources sources = new SharedSources(shared);
        Traced[] r = new Traced[3];
        for (int i = 0; i < 3; i++) {
            r[i] = sources.ohms(((LineReading.Value) readings[i]).ohms());
        }
        PhaseResult impossible = impossible(r);
        if (impossible != null) {
            return impossible;
        }
        return star ? classifyStar(r) : classifyDelta(r);
    }

    /** Deals with readings above range; null when all three conduct. */
    private static PhaseResult openPaths(LineReading[] readings, boolean star) {
        int open = 0;
        int lastOpen = -1;
        int lastClosed = -1;
        for (int i = 0; i < 3; i++) {
            if (readings[i] instanceof LineReading.AboveRange) {
                open++;
                lastOpen = i;
            } else {
                lastClosed = i;
            }
        }
        return switch (open) {
            case 0 -> null;
            case 1 -> new Inconsistent(PAIRS[lastOpen], Reason.OPEN_ACROSS_A_CLOSED_PATH, Set.of());
            case 2 -> star
                    ? new OpenPhase(opposite(lastClosed), Set.of(Finding.OPEN_LINE))
                    : new OpenLine(opposite(lastClosed), Set.of());
            default -> new OpenLine(null, Set.of());
        };
    }

    /** The line terminal that a pair leaves out: W for UV, U for VW, V for WU. */
    private static Phase opposite(int pair) {
        return PHASES[(pair + 2) % 3];
    }

    private static PhaseResult impossible(Traced[] r) {
        int zeros = 0;
        for (int i = 0; i < 3; i++) {
            if (r[i].value() < -K * r[i].u()) {
                return new Inconsistent(PAIRS[i], Reason.BELOW_ZERO, Set.of());
            }
            if (r[i].value() <= K * r[i].u()) {
                zeros++;
            }
        }
        if (zeros >= 2) {
            return new Inconsistent(PAIRS[widest(r)], Reason.NOT_RESOLVED, EnumSet.complementOf(
                    EnumSet.of(Finding.INCONSISTENT)));
        }
        for (int i = 0; i < 3; i++) {
            Traced slack = slack(r, i);
            if (slack.value() < -tolerance(slack, r)) {
                return new Inconsistent(outlier(r), Reason.ONE_EXCEEDS_THE_OTHERS, Set.of());
            }
        }
        return null;
    }

    /** How far the two other readings together exceed reading i: twice the star phase opposite to the pair. */
    private static Traced slack(Traced[] r, int i) {
        return r[(i + 1) % 3].plus(r[(i + 2) % 3]).minus(r[i]);
    }

    /** Exact readings are compared to rounding error, not to the last bit. */
    private static double tolerance(Traced x, Traced[] r) {
        double size = Math.abs(r[0].value()) + Math.abs(r[1].value()) + Math.abs(r[2].value());
        return Math.max(K * x.u(), 1e-12 * size);
    }

    /**
     * The phases of a winding known to be sound, in the order U, V, W, keeping what the readings share so that a
     * difference between the phases has the right uncertainty.
     *
     * @param star true for a star without neutral, false for a delta
     */
    public static List<Traced> soundPhases(boolean star, Traced uv, Traced vw, Traced wu) {
        Traced[] r = {uv, vw, wu};
        Traced[] phase = new Traced[3];
        for (int i = 0; i < 3; i++) {
            Traced slack = slack(r, i);
            if (star) {
                phase[(i + 2) % 3] = slack.times(0.5);
            } else {
                phase[i] = r[(i + 1) % 3].times(r[(i + 2) % 3]).times(2).over(slack).minus(slack.times(0.5));
            }
        }
        return List.of(phase);
    }

    private static PhaseResult classifyStar(Traced[] r) {
        Traced[] phase = new Traced[3];
        int shorted = -1;
        int count = 0;
        for (int i = 0; i < 3; i++) {
            // the phase at the terminal that the pair leaves out
            Traced p = slack(r, i).times(0.5);
            int index = (i + 2) % 3;
            phase[index] = p;
            if (p.value() <= tolerance(p, r)) {
                shorted = index;
                count++;
            }
        }
        if (count == 0) {
            return sound(phase, Set.of());
        }
        if (count == 1) {
            return new ShortedPhase(PHASES[shorted], wellBelow(phase[shorted], largest(phase)) ? Set.of() : Set.of(Finding.SOUND));
        }
        return new Inconsistent(PAIRS[widest(r)], Reason.NOT_RESOLVED, Set.of(Finding.SOUND, Finding.SHORTED_PHASE));
    }

    private static PhaseResult classifyDelta(Traced[] r) {
        for (int i = 0; i < 3; i++) {
            if (r[i].value() <= tolerance(r[i], r)) {
                return new ShortedPhase(PHASES[i], Set.of());
            }
        }
        Traced[] phase = new Traced[3];
        int open = -1;
        int count = 0;
        for (int i = 0; i < 3; i++) {
            Traced slack = slack(r, i);
            if (slack.value() <= tolerance(slack, r)) {
                open = i;
                count++;
                continue;
            }
            Traced product = r[(i + 1) % 3].times(r[(i + 2) % 3]).times(2);
            phase[i] = product.over(slack).minus(slack.times(0.5));
        }
        if (count == 0) {
            return sound(phase, Set.of());
        }
        if (count == 1) {
            return new OpenPhase(PHASES[open], wellBelow(slack(r, open), largest(r)) ? Set.of() : Set.of(Finding.SOUND));
        }
        return new Inconsistent(PAIRS[widest(r)], Reason.NOT_RESOLVED, Set.of(Finding.SOUND, Finding.OPEN_PHASE));
    }

    private static Sound sound(Traced[] phase, Set<Finding> also) {
        return new Sound(phase[0].uncertain(), phase[1].uncertain(), phase[2].uncertain(), also);
    }

    /**
     * Whether a difference that came out as zero stays, with its whole interval, below half of what a healthy winding
     * would show there.
     */
    private static boolean wellBelow(Traced zero, double healthy) {
        return zero.value() + K * zero.u() < healthy / 2;
    }

    private static double largest(Traced[] x) {
        return Math.max(x[0].value(), Math.max(x[1].value(), x[2].value()));
    }

    /** The reading with the largest uncertainty over its value: the one worth taking again with a finer meter. */
    private static int widest(Traced[] r) {
        int worst = 0;
        for (int i = 1; i < 3; i++) {
            if (share(r[i]) > share(r[worst])) {
                worst = i;
            }
        }
        return worst;
    }

    private static double share(Traced x) {
        return x.u() / Math.max(Math.abs(x.value()), Double.MIN_NORMAL);
    }

    /** The reading farthest from the middle one by ratio: in a sound machine all three are nearly equal. */
    private static TerminalPair outlier(Traced[] r) {
        double[] v = {r[0].value(), r[1].value(), r[2].value()};
        double[] sorted = v.clone();
        Arrays.sort(sorted);
        double middle = Math.max(sorted[1], Double.MIN_NORMAL);
        int worst = 0;
        for (int i = 1; i < 3; i++) {
            if (distance(v[i], middle) > distance(v[worst], middle)) {
                worst = i;
            }
        }
        return PAIRS[worst];
    }

    private static double distance(double x, double middle) {
        return Math.abs(Math.log(Math.max(x, Double.MIN_NORMAL) / middle));
    }
}

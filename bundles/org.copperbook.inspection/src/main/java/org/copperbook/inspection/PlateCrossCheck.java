package org.copperbook.inspection;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.nameplate.Nameplate;

/**
 * Compares the figures of a rating plate with each other: S = sqrt(3) U I, P = S cos phi (a generator's output), and
 * n = 120 f / p. Plates are rounded, so a figure counts as contradicted only beyond {@value #TOLERANCE_PERCENT} %.
 */
public final class PlateCrossCheck {

    /** Rounding and the plate's own tolerance together; common practice, no source. */
    static final double TOLERANCE_PERCENT = 3;

    /** A contradiction: key of its sentence and what fills it. */
    public record Contradiction(String textKey, Object... arguments) {
    }

    /** The contradictions; empty when the figures given agree or too few are given to say. */
    public List<Contradiction> findings(Nameplate plate) {
        List<Contradiction> found = new ArrayList<>();
        apparentPower(plate, found);
        power(plate, found);
        speed(plate, found);
        return found;
    }

    private static void apparentPower(Nameplate p, List<Contradiction> found) {
        if (p.apparentPowerVA() != null && p.voltageV() != null && p.currentA() != null && p.phases() != null) {
            double computed = (p.phases() == 3 ? Math.sqrt(3) : p.phases()) * p.voltageV() * p.currentA();
            if (apart(p.apparentPowerVA(), computed)) {
                found.add(new Contradiction("plate.contradicts.apparentPower", computed / 1000, p.apparentPowerVA() / 1000));
            }
        }
    }

    private static void power(Nameplate p, List<Contradiction> found) {
        if (p.apparentPowerVA() != null && p.powerW() != null && p.powerFactor() != null) {
            double computed = p.apparentPowerVA() * p.powerFactor();
            if (apart(p.powerW(), computed)) {
                found.add(new Contradiction("plate.contradicts.power", computed / 1000, p.powerW() / 1000));
            }
        }
    }

    private static void speed(Nameplate p, List<Contradiction> found) {
        boolean synchronous = p.apparentPowerVA() != null;
        if (p.frequencyHz() != null && p.poles() != null && p.speedRpm() != null) {
            double computed = 120 * p.frequencyHz() / p.poles();
            boolean slips = !synchronous && p.speedRpm() < computed && p.speedRpm() > 0.85 * computed;
            if (!slips && apart(p.speedRpm(), computed)) {
                found.add(new Contradiction("plate.contradicts.speed", computed, p.speedRpm()));
            }
        }
    }

    private static boolean apart(double stated, double computed) {
        return Math.abs(stated - computed) > TOLERANCE_PERCENT / 100 * computed;
    }
}

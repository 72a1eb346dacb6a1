package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.calc.winding.PhaseSymmetry;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;

/**
 * What the coil list says by itself: the winding factor of each phase by vector sum (Say, Alternating Current Machines;
 * Pyrhonen, Jokinen and Hrabovcova, ch. 2) and whether the phases are alike and evenly spread.
 */
final class LayoutFigures {

    /** Above this the phases are worth a second look; common practice, no source. */
    private static final double UNLIKE = 0.01;
    /** Degrees between phases that are worth a second look; common practice, no source. */
    private static final double ASKEW = 1;
    private static final int MOST_FINDINGS = 3;

    private LayoutFigures() {
    }

    static List<Verdict> of(WindingCase c) {
        if (c.role().isField()) {
            return List.of();
        }
        try {
            Optional<Winding> coils = c.coils();
            if (coils.isEmpty()) {
                List<String> missing = WindingCase.lacking(c.data().slots(), "capture.slots", c.data().poles(),
                        "capture.poles");
                missing.add(Phrases.say("figure.needs.coils"));
                return List.of(c.missing("factor", missing), c.missing("balance", missing));
            }
            return List.of(factor(c, coils.get()), balance(c, coils.get()));
        } catch (OutOfRange e) {
            return List.of(c.refused("factor", e.getMessage()), c.refused("balance", e.getMessage()));
        }
    }

    private static Verdict factor(WindingCase c, Winding w) {
        WindingFactors factors = new WindingFactors(w);
        List<String> each = new ArrayList<>();
        double sum = 0;
        for (int p = 1; p <= w.phases(); p++) {
            if (w.coilsOf(p).isEmpty()) {
                return c.missing("factor", List.of(Phrases.say("figure.needs.phase", mark(p))));
            }
            double f = factors.factor(p, 1);
            sum += f;
            each.add(mark(p) + " " + Figures.number(f, 4));
        }
        return c.figure("factor").value(sum / w.phases(), null, "").outcome(Outcome.NO_LIMIT_SET)
                .limitText(Phrases.say("limit.none")).source(Phrases.say("figure.source.factor"))
                .reason(Phrases.say("figure.factor", String.join(", ", each))).done();
    }

    private static String mark(int phase) {
        return String.valueOf("UVWXYZ".charAt((phase - 1) % 6));
    }

    private static Verdict balance(WindingCase c, Winding w) {
        List<String> findings = w.findings();
        if (w.phases() < 2) {
            return c.figure("balance").outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                    .reason(Phrases.say("figure.one-phase")).done();
        }
        if (findings.stream().anyMatch(f -> f.startsWith("phase"))) {
            return c.figure("balance").outcome(Outcome.DOUBTFUL).limitText(limit()).source(practice())
                    .reason(String.join("; ", findings.subList(0, Math.min(MOST_FINDINGS, findings.size()))))
                    .settle(Phrases.say("settle.figure.balance")).done();
        }
        PhaseSymmetry s = PhaseSymmetry.of(w);
        boolean alike = s.within(UNLIKE, ASKEW) && findings.isEmpty();
        double deviation = s.balanced() ? 0 : s.largestMagnitudeDeviation();
        VerdictDraft d = c.figure("balance").value(deviation, null, "1").limitText(limit())
                .bounds(Bounds.atMost(UNLIKE)).source(practice())
                .outcome(alike ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say(s.balanced() ? "figure.balanced" : "figure.unbalanced",
                        Figures.show(deviation, "1"), Figures.number(s.largestAngleDeviation(), 3)))
                .settle(alike ? "" : Phrases.say("settle.figure.balance"));
        findings.stream().limit(MOST_FINDINGS).forEach(f -> d.addReason(sentence(f)));
        return d.done();
    }

    private static String sentence(String finding) {
        return Character.toUpperCase(finding.charAt(0)) + finding.substring(1) + ".";
    }

    private static String limit() {
        return Phrases.say("limit.at-most", Figures.show(UNLIKE, "1"));
    }

    private static String practice() {
        return Phrases.say("figure.source.practice");
    }
}

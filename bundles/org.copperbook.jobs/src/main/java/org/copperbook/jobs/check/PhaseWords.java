package org.copperbook.jobs.check;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.resistance.TerminalPair;

/** What three line readings mean, in words. */
final class PhaseWords {

    private PhaseWords() {
    }

    static String of(PhaseResult result) {
        String said;
        if (result instanceof PhaseResult.OpenPhase open) {
            said = Phrases.say("phases.open-phase", open.open().name());
        } else if (result instanceof PhaseResult.ShortedPhase shorted) {
            said = Phrases.say("phases.shorted-phase", shorted.shorted().name());
        } else if (result instanceof PhaseResult.OpenLine line) {
            said = line.line() == null ? Phrases.say("phases.open-lines")
                    : Phrases.say("phases.open-line", line.line().name());
        } else if (result instanceof PhaseResult.Inconsistent wrong) {
            said = Phrases.say("phases." + wrong.reason().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), pair(wrong.repeat()));
        } else {
            said = Phrases.say("phases.sound");
        }
        if (result.alsoPossible().isEmpty()) {
            return said;
        }
        String others = result.alsoPossible().stream().map(f -> Phrases.word("finding", f))
                .collect(Collectors.joining(", "));
        return said + " " + Phrases.say("phases.also", others);
    }

    static String settle(PhaseResult result) {
        if (result instanceof PhaseResult.Inconsistent wrong) {
            return wrong.reason() == PhaseResult.Reason.NOT_RESOLVED ? Phrases.say("settle.bridge")
                    : Phrases.say("settle.repeat-pair", pair(wrong.repeat()));
        }
        return Phrases.say(surelyFaulty(result) ? "settle.open" : "settle.bridge");
    }

    /** Whether the winding is faulty whichever of the possible classes is the true one. */
    static boolean surelyFaulty(PhaseResult result) {
        return Stream.concat(Stream.of(result.finding()), result.alsoPossible().stream())
                .noneMatch(f -> f == PhaseResult.Finding.SOUND || f == PhaseResult.Finding.INCONSISTENT);
    }

    private static String pair(TerminalPair p) {
        return p.name().charAt(0) + "-" + p.name().charAt(1);
    }
}

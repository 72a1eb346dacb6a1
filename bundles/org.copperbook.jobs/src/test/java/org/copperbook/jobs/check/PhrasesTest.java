package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import org.copperbook.calc.excitation.DiodeFinding;
import org.copperbook.calc.excitation.SeparateExcitationRun;
import org.copperbook.calc.resistance.PhaseResult;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.inspection.BearingFit;
import org.copperbook.jobs.inspection.Runout;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;

class PhrasesTest {

    @Test
    void everyPhraseCanBeSaid() {
        ResourceBundle all = ResourceBundle.getBundle("org.copperbook.jobs.check.verdicts");
        for (String key : all.keySet()) {
            String said = Phrases.say(key, "1", "2", "3", "4", "5", "6");
            assertFalse(said.isBlank(), key);
            assertFalse(said.matches(".*\\{\\d}.*"), key + ": " + said);
        }
    }

    @Test
    void everyConstantHasItsWord() {
        Map<String, Enum<?>[]> words = Map.ofEntries(Map.entry("role", WindingRole.values()),
                Map.entry("state", Reading.State.values()), Map.entry("role-person", Role.values()),
                Map.entry("point", HoldPoint.values()), Map.entry("point-not-applicable", HoldPoint.values()),
                Map.entry("point-no-record", HoldPoint.values()), Map.entry("signs", Role.values()),
                Map.entry("step", Step.values()), Map.entry("stage", Stage.At.values()),
                Map.entry("outcome", Outcome.values()), Map.entry("finding", PhaseResult.Finding.values()),
                Map.entry("run.row", SeparateExcitationRun.Row.values()),
                Map.entry("run.row-short", SeparateExcitationRun.Row.values()),
                Map.entry("run.doubt", SeparateExcitationRun.Doubt.values()),
                Map.entry("suspect", SeparateExcitationRun.Suspect.values()),
                Map.entry("diode", DiodeFinding.Reason.values()), Map.entry("settle.diode", DiodeFinding.Reason.values()),
                Map.entry("diode-state", DiodeFinding.State.values()), Map.entry("observed", Observed.Kind.values()),
                Map.entry("base", DiodePosition.BasePolarity.values()), Map.entry("plate", DiodePosition.Plate.values()),
                Map.entry("point-kind", RunPoint.Kind.values()), Map.entry("end", RunUp.End.values()), Map.entry("seat", BearingFit.Seat.values()),
                Map.entry("runout-place", Runout.Place.values()),
                Map.entry("direction", RunUp.Direction.values()), Map.entry("closed", Standing.How.values()),
                Map.entry("waiting", Standing.WaitingFor.values()), Map.entry("phases", PhaseResult.Reason.values()));
        words.forEach((prefix, constants) -> {
            for (Enum<?> c : constants) {
                assertFalse(Phrases.word(prefix, c).isBlank(), prefix + " " + c);
            }
        });
    }

    @Test
    void everyOutcomeOfASentenceFamilyHasItsSentence() {
        for (String family : List.of("unbalance", "deviation", "group", "resistance.peers", "run.balance",
                "run-up.unbalance", "core.loss", "core.hot", "vibration", "suppressor")) {
            for (String o : List.of("meets", "doubtful", "fails")) {
                assertFalse(Phrases.say(family + "." + o, "1", "2", "3", "4", "5").isBlank());
            }
        }
        for (String family : List.of("unbalance", "deviation", "run.balance", "run-up.unbalance", "core.loss",
                "core.hot", "core.burn", "vibration", "suppressor", "regulation", "bearing", "index")) {
            assertFalse(Phrases.say(family + ".no-limit-set", "1", "2", "3", "4", "5").isBlank());
        }
    }

    @Test
    void figuresAreShownAsTheTradeWritesThem() {
        Locale before = Locale.getDefault(Locale.Category.FORMAT);
        try {
            Locale.setDefault(Locale.Category.FORMAT, Locale.ENGLISH);
            assertEquals("46.19 mΩ", Figures.show(0.0461862385, "ohm"));
            assertEquals("1.09 %", Figures.show(0.010940919, "1"));
            assertEquals("0.02 %", Figures.show(0.000151, "1"));
            assertEquals("<0.01 %", Figures.show(0.0000151, "1"));
            assertEquals("±2 %", Figures.bounds(Bounds.between(-0.02, 0.02), "1"));
            assertEquals("40 mΩ to 54 mΩ", Figures.bounds(Bounds.between(0.04, 0.054), "ohm"));
            Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
            assertEquals("1,09 %", Figures.show(0.010940919, "1"));
            assertTrue(Figures.show(0.0461862385, "ohm").startsWith("46,19"));
        } finally {
            Locale.setDefault(Locale.Category.FORMAT, before);
        }
    }
}

package org.copperbook.sheets;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.HoldPoint;

/** Verdicts of every kind beside the sample record, for the looks of the workbook. */
final class SampleVerdicts {

    private SampleVerdicts() {
    }

    private static Verdict of(String id, String part, String path, String title, Outcome outcome, Double value, Double u, Bounds bounds,
            String unit, String limit, String source, String reason, String settle) {
        return new Verdict(id, PartKey.parse(part), title, outcome, value, u, bounds, unit, limit, source, reason, settle, path, true);
    }

    static List<Verdict> all() {
        List<Verdict> all = new ArrayList<>();
        String unbalance = "common practice, no source";
        all.add(of("main-stator.unbalance.as-found", "inspection", "/readings/1", "Main stator: unbalance of the phases, as found",
                Outcome.FAILS, 0.0425, 0.004, Bounds.atMost(0.02), "1", "at most 2 %", unbalance,
                "The phases differ by 4.25 % ± 0.4 %, more than 2 %.", "Measure the coil groups one by one; start with phase V."));
        all.add(of("main-stator.unbalance.as-left", "run-up", "/readings/0", "Main stator: unbalance of the phases, as left",
                Outcome.MEETS, 0.0016, 0.004, Bounds.atMost(0.02), "1", "at most 2 %", unbalance, "The phases differ by 0.16 %.", ""));
        all.add(of("main-stator.insulation.as-found", "inspection", "/readings/5", "Main stator: insulation to earth, as found",
                Outcome.FAILS, 0.42e6, 0.05e6, Bounds.atLeast(1e6), "ohm", "at least 1 MΩ", "common practice, no source",
                "0.42 MΩ is below 1 MΩ.", "Clean and dry, then measure again."));
        all.add(of("main-stator.insulation.as-left", "run-up", "/readings/4", "Main stator: insulation to earth, as left",
                Outcome.MEETS, 3.8e9, 0.3e9, Bounds.atLeast(5e6), "ohm", "at least 5 MΩ at 40 °C", "IEEE 43-2013, Table 3",
                "3.8 GΩ is above 5 MΩ.", ""));
        all.add(of("exciter-rotor.resistance.as-found.u-v", "inspection", "/readings/4", "Exciter rotor: resistance U-V, as found",
                Outcome.DOUBTFUL, 0.05, 0.1, Bounds.between(0.12, 0.2), "ohm", "0.12 Ω to 0.2 Ω", "maker's figure",
                "The meter cannot resolve the reading.", "Use a four-wire bridge."));
        all.add(of("main-stator.resistance.as-left.u-v", "run-up", "/readings/0", "Main stator: resistance U-V, as left",
                Outcome.NO_LIMIT_SET, 0.09335, 0.0004, null, "ohm", "no limit set", "", "93.35 mΩ at 20 °C; no limit is set.", "A named judgement."));
        all.add(of("main-stator.deviation.as-left.u-v", "run-up", "/readings/0", "Main stator U-V: as left against as found",
                Outcome.MEETS, -0.0071, 0.006, Bounds.between(-0.03, 0.03), "1", "-3 % to 3 %", "common practice, no source", "Changed by -0.7 %.", ""));
        all.add(of("main-stator.deviation.as-left.v-w", "run-up", "/readings/1", "Main stator V-W: as left against as found",
                Outcome.FAILS, 0.0599, 0.006, Bounds.between(-0.03, 0.03), "1", "-3 % to 3 %", "common practice, no source",
                "Changed by 6 %: the as-found phase had shorted turns.", "A concession with this reason."));
        all.add(of("main-rotor.deviation.as-left.f1-f2", "run-up", "/readings/3", "Main rotor F1-F2: as left against as found",
                Outcome.DOUBTFUL, 0.0010, 0.035, Bounds.between(-0.03, 0.03), "1", "-3 % to 3 %", "common practice, no source",
                "The uncertainty straddles the limit.", "Measure with the same meter after a night's soak."));
        for (int i = 0; i < 12; i++) {
            boolean low = i == 4;
            all.add(of("main-stator.resistance.as-found.group-" + (i + 1), "winding/main-stator", "/groups/" + i + "/resistance",
                    "Main stator: group " + (i + 1) + ", as found", low ? Outcome.FAILS : Outcome.MEETS, low ? 0.0204 : 0.023, 0.0001,
                    Bounds.between(0.02254, 0.02346), "ohm", "22.54 mΩ to 23.46 mΩ", "within 2 % of the median: common practice, no source",
                    low ? "20.4 mΩ lies below." : "Inside.", ""));
        }
        for (int i = 0; i < 6; i++) {
            all.add(of("diode.d" + (i + 1) + ".as-found", "rectifier", "/positions/" + i + "/asFoundForward", "Diode D" + (i + 1) + ", as found",
                    i == 1 ? Outcome.FAILS : Outcome.MEETS, null, null, null, "", "conducts one way, blocks the other",
                    "common practice, no source", i == 1 ? "Reads low both ways, isolated: shorted." : "Conducts one way and blocks the other.",
                    i == 1 ? "Change the complete set." : ""));
            all.add(of("rectifier.torque.d" + (i + 1), "rectifier", "/positions/" + i + "/torqueNm", "Torque of D" + (i + 1), Outcome.MEETS,
                    2.8 + 0.02 * i, 0.11, Bounds.between(2.3, 3.4), "N m", "2.3 N m to 3.4 N m", "data sheet of the diode", "Inside.", ""));
            all.add(of("run-up.vibration." + i, "run-up", "/vibration/" + i, "Vibration " + (i + 1), Outcome.MEETS, 0.9 + 0.3 * (i % 3), 0.2,
                    Bounds.atMost(2.3), "mm/s", "at most 2.3 mm/s", "IEC 60034-14", "Inside.", ""));
        }
        all.add(of("excitation-run.1.output", "inspection", "/excitationRuns/0", "Separate-excitation run 1: output", Outcome.FAILS, -0.234, 0.03,
                Bounds.between(-0.1, 0.1), "1", "within 10 % of 400 V", "common practice, no source", "Output is 23 % low; the balance is worse than 1 %:"
                        + " any of the five may have failed.", "Isolate and measure each winding and each diode."));
        all.add(of("core.loss.change", "core", "/runs/1", "Core: change of the specific loss", Outcome.MEETS, 0.036, 0.02, Bounds.atMost(0.2), "1",
                "at most 20 %", "workshop's profile", "3.6 % more than before burn-out.", ""));
        all.add(of("run-up.overspeed", "run-up", "/overspeed", "Overspeed", Outcome.NOT_MEASURED, null, null, Bounds.atLeast(1800), "r/min",
                "120 % for 2 min", "IEC 60034-1", "No reading of the speed.", "Note the speed."));
        return all;
    }

    static List<HoldPointState> holdPoints(boolean released) {
        List<HoldPointState> states = new ArrayList<>();
        for (HoldPoint p : HoldPoint.values()) {
            boolean signed = released || p != HoldPoint.RELEASE;
            states.add(new HoldPointState(p, signed ? HoldPointState.State.SIGNED : HoldPointState.State.OPEN,
                    signed ? List.of() : List.of("Main stator V-W: as left against as found: fails", "Overspeed: not measured"),
                    signed ? List.of() : List.of("quality checker"), true));
        }
        return states;
    }
}

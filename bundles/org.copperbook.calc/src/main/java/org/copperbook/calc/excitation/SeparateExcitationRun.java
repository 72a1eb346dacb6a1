package org.copperbook.calc.excitation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.copperbook.calc.Require;
import org.copperbook.calc.resistance.Unbalance;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Decision;
import org.copperbook.calc.verdict.GuardedDecision;
import org.copperbook.calc.verdict.Outcome;

/**
 * The run with the regulator off and a low-voltage battery on the exciter field, read as a table of output against
 * expected and balance between phases. Common practice, no source.
 *
 * <p>With a fixed exciter field both exciter and main voltage rise with speed, so the output follows speed to a power
 * between 1 (saturated) and 2 (not); both corrections are made, and an output verdict that depends on the power is
 * doubtful.
 */
public final class SeparateExcitationRun {

    private SeparateExcitationRun() {
    }

    /** The rows of the table. */
    public enum Row {
        /** Output and balance within limits: stator, rotor, exciter and rectifier are sound. */
        ALL_SOUND,
        /** Low but balanced: main stator sound, the excitation chain is suspect. */
        LOW_BALANCED,
        /** Output right but unbalanced: the main stator is suspect. */
        UNBALANCED,
        /** Low and unbalanced: any of the five may have failed. */
        LOW_UNBALANCED,
        /** None or residual only: not yet a verdict on the stator. */
        NONE,
        /** More than the band high: check current, connection, speed and meter first. */
        HIGH
    }

    /** Why an interpretation is doubtful. */
    public enum Doubt {
        /** The verdict depends on the power with which output follows speed. */
        SPEED_POWER,
        /** The speed lies, or may lie, outside its band. */
        SPEED_OUT_OF_BAND,
        /** The expected output is not known. */
        EXPECTED_UNKNOWN,
        /** The output lies within its uncertainty of a limit. */
        OUTPUT_NEAR_LIMIT,
        /** The unbalance lies within its uncertainty of the limit. */
        BALANCE_NEAR_LIMIT
    }

    /** Parts that may be at fault, and things to look at before a verdict. */
    public enum Suspect {
        RECTIFIER, MAIN_ROTOR, EXCITER_STATOR, EXCITER_ROTOR, MAIN_STATOR, REGULATOR, REGULATOR_SUPPLY_AND_SENSING,
        RESIDUAL_FIELD, EXCITER_FIELD_SUPPLY, EXCITATION_CURRENT, CONNECTION, SPEED, METER
    }

    /**
     * What the run says.
     *
     * @param row the most likely row
     * @param rows every row that the uncertainty allows, most likely first
     * @param output verdict on the output
     * @param balance verdict on the balance
     * @param outputLinear output over expected, corrected with the first power of speed; null when expected is unknown
     * @param outputSquare output over expected, corrected with the square of speed; null when expected is unknown
     * @param unbalance NEMA MG 1 unbalance of the line voltages, fraction; null when there is no output to compare
     * @param doubts why it is doubtful; empty when it is sure
     * @param suspects what to look at, in order of ease
     */
    public record Interpretation(Row row, List<Row> rows, Decision output, Decision balance, Uncertain outputLinear,
            Uncertain outputSquare, Uncertain unbalance, Set<Doubt> doubts, List<Suspect> suspects) {

        /** Whether any reason for doubt remains. */
        public boolean doubtful() {
            return !doubts.isEmpty();
        }
    }

    /**
     * What was measured.
     *
     * @param uv line voltage U to V, V
     * @param vw line voltage V to W, V
     * @param wu line voltage W to U, V
     * @param speed speed, r/min, above zero
     * @param nominalSpeed nominal speed, r/min
     * @param meter what the three voltage readings share
     */
    public record Measured(Uncertain uv, Uncertain vw, Uncertain wu, Uncertain speed, double nominalSpeed,
            SharedTerms meter) {

        public Measured {
            Require.positive("speed", speed.value(), "r/min");
            Require.positive("nominal speed", nominalSpeed, "r/min");
        }
    }

    /** Interprets by {@link RunLimits#DEFAULT}. */
    public static Interpretation interpret(Measured run, ExpectedOutput expected) {
        return interpret(run, expected, RunLimits.DEFAULT);
    }

    /** Interprets by the limits given; voltages in V, speeds in r/min. */
    public static Interpretation interpret(Measured run, ExpectedOutput expected, RunLimits limits) {
        Uncertain mean = mean(run);
        Uncertain reference = reference(expected);
        boolean known = !(expected instanceof ExpectedOutput.Unknown);
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        Uncertain linear = null;
        Uncertain square = null;
        boolean none = mean.value() <= 0;
        if (reference != null) {
            linear = ratio(mean, reference, run, 1);
            square = ratio(mean, reference, run, 2);
            none |= Math.max(linear.value(), square.value()) <= limits.residual();
        }
        speedDoubt(run, limits, doubts);
        if (none) {
            Decision fails = known ? decideOutput(linear, square, limits, EnumSet.noneOf(Doubt.class))
                    : new Decision(Outcome.DOUBTFUL, Double.NaN);
            return new Interpretation(Row.NONE, List.of(Row.NONE), fails,
                    new Decision(Outcome.NOT_MEASURED, Double.NaN), known ? linear : null, known ? square : null,
                    null, doubts, suspects(Row.NONE));
        }
        Uncertain unbalance = Unbalance.ofReadings(List.of(run.uv(), run.vw(), run.wu()), run.meter());
        Decision balance = GuardedDecision.decide(unbalance, Bounds.atMost(limits.balance()));
        if (balance.outcome() == Outcome.DOUBTFUL) {
            doubts.add(Doubt.BALANCE_NEAR_LIMIT);
        }
        if (!known) {
            doubts.add(Doubt.EXPECTED_UNKNOWN);
            List<Row> rows = rows(Set.of(Level.RIGHT, Level.LOW), balance, unbalance.value() <= limits.balance(),
                    Level.RIGHT);
            return new Interpretation(rows.get(0), rows, new Decision(Outcome.DOUBTFUL, Double.NaN), balance, null,
                    null, unbalance, doubts, suspects(rows.get(0)));
        }
        Decision output = decideOutput(linear, square, limits, doubts);
        double middle = (linear.value() + square.value()) / 2;
        List<Row> rows = rows(levels(linear, square, limits), balance, unbalance.value() <= limits.balance(),
                level(middle, limits));
        return new Interpretation(rows.get(0), rows, output, balance, linear, square, unbalance, doubts,
                suspects(rows.get(0)));
    }

    private enum Level {
        RIGHT, LOW, HIGH
    }

    private static Uncertain mean(Measured run) {
        double value = (run.uv().value() + run.vw().value() + run.wu().value()) / 3;
        double shared = run.meter().relativeGain() * value;
        double own = 0;
        for (Uncertain v : List.of(run.uv(), run.vw(), run.wu())) {
            double gain = run.meter().relativeGain() * v.value();
            own += Math.max(0, v.u() * v.u() - gain * gain);
        }
        return new Uncertain(value, Math.hypot(shared, Math.sqrt(own) / 3));
    }

    private static Uncertain reference(ExpectedOutput expected) {
        if (expected instanceof ExpectedOutput.StoredPoint p) {
            Require.positive("expected output", p.volts().value(), "V");
            return p.volts();
        }
        if (expected instanceof ExpectedOutput.Nominal n) {
            return Uncertain.exact(Require.positive("nominal voltage", n.volts(), "V"));
        }
        Double rated = ((ExpectedOutput.Unknown) expected).ratedVolts();
        return rated == null ? null : Uncertain.exact(Require.positive("rated voltage", rated, "V"));
    }

    private static Uncertain ratio(Uncertain mean, Uncertain reference, Measured run, int power) {
        double speed = run.nominalSpeed() / run.speed().value();
        double value = mean.value() * Math.pow(speed, power) / reference.value();
        double fromVolts = mean.u() * Math.pow(speed, power) / reference.value();
        double relative = Math.hypot(reference.relative(), power * run.speed().relative());
        return new Uncertain(value, Math.hypot(fromVolts, value * relative));
    }

    private static void speedDoubt(Measured run, RunLimits limits, Set<Doubt> doubts) {
        Uncertain deviation = run.speed().times(1 / run.nominalSpeed()).plus(-1);
        Bounds band = Bounds.between(-limits.speedBand(), limits.speedBand());
        if (GuardedDecision.decide(deviation, band).outcome() != Outcome.MEETS) {
            doubts.add(Doubt.SPEED_OUT_OF_BAND);
        }
    }

    private static Decision decideOutput(Uncertain linear, Uncertain square, RunLimits limits, Set<Doubt> doubts) {
        Bounds band = Bounds.between(1 - limits.outputBand(), 1 + limits.outputBand());
        Decision one = GuardedDecision.decide(linear, band);
        Decision two = GuardedDecision.decide(square, band);
        double p = Math.min(one.probabilityOfConformity(), two.probabilityOfConformity());
        if (one.outcome() == two.outcome()) {
            if (one.outcome() == Outcome.DOUBTFUL) {
                doubts.add(Doubt.OUTPUT_NEAR_LIMIT);
            }
            return new Decision(one.outcome(), p);
        }
        doubts.add(Doubt.SPEED_POWER);
        return new Decision(Outcome.DOUBTFUL, p);
    }

    private static Level level(double ratio, RunLimits limits) {
        if (ratio < 1 - limits.outputBand()) {
            return Level.LOW;
        }
        return ratio > 1 + limits.outputBand() ? Level.HIGH : Level.RIGHT;
    }

    private static Set<Level> levels(Uncertain linear, Uncertain square, RunLimits limits) {
        Set<Level> levels = EnumSet.noneOf(Level.class);
        for (Uncertain x : List.of(linear, square)) {
            double k = GuardedDecision.USUAL_COVERAGE;
            levels.add(level(x.low(k), limits));
            levels.add(level(x.value(), limits));
            levels.add(level(x.high(k), limits));
        }
        return levels;
    }

    private static List<Row> rows(Set<Level> levels, Decision balance, boolean balanced, Level likely) {
        List<Row> rows = new ArrayList<>();
        rows.add(row(likely, balanced));
        for (Level level : Level.values()) {
            if (!levels.contains(level)) {
                continue;
            }
            addOnce(rows, row(level, balanced));
            if (balance.outcome() == Outcome.DOUBTFUL) {
                addOnce(rows, row(level, !balanced));
            }
        }
        return List.copyOf(rows);
    }

    private static void addOnce(List<Row> rows, Row row) {
        if (!rows.contains(row)) {
            rows.add(row);
        }
    }

    private static Row row(Level level, boolean balanced) {
        return switch (level) {
            case HIGH -> Row.HIGH;
            case LOW -> balanced ? Row.LOW_BALANCED : Row.LOW_UNBALANCED;
            case RIGHT -> balanced ? Row.ALL_SOUND : Row.UNBALANCED;
        };
    }

    /** What to look at for a row, in order of ease. */
    public static List<Suspect> suspects(Row row) {
        return switch (row) {
            case ALL_SOUND -> List.of(Suspect.REGULATOR, Suspect.REGULATOR_SUPPLY_AND_SENSING, Suspect.RESIDUAL_FIELD);
            case LOW_BALANCED -> List.of(Suspect.RECTIFIER, Suspect.MAIN_ROTOR, Suspect.EXCITER_STATOR,
                    Suspect.EXCITER_ROTOR);
            case UNBALANCED -> List.of(Suspect.MAIN_STATOR);
            case LOW_UNBALANCED -> List.of(Suspect.RECTIFIER, Suspect.MAIN_ROTOR, Suspect.EXCITER_STATOR,
                    Suspect.EXCITER_ROTOR, Suspect.MAIN_STATOR);
            case NONE -> List.of(Suspect.EXCITER_FIELD_SUPPLY, Suspect.METER, Suspect.EXCITER_STATOR,
                    Suspect.RECTIFIER, Suspect.MAIN_ROTOR, Suspect.EXCITER_ROTOR);
            case HIGH -> List.of(Suspect.EXCITATION_CURRENT, Suspect.CONNECTION, Suspect.SPEED, Suspect.METER);
        };
    }
}

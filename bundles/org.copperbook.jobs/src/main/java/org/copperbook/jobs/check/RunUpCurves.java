package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.runup.OpenCircuitCurve;
import org.copperbook.calc.runup.ShortCircuitLine;
import org.copperbook.calc.runup.VoltageAtSpeed;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;

/**
 * The open- and short-circuit curves of a run-up, brought to nominal speed: voltage in proportion to speed (the field
 * current held), short-circuit current as read, because it does not follow speed while the reactance far outweighs the
 * resistance (IEC 60034-4-1). The field is that of the machine's rotor where it was read at every point, else the exciter's.
 *
 * @param rising     open-circuit points taken with rising field, in order of the field
 * @param falling    those taken with falling field
 * @param shorted    short-circuit points
 * @param mainField  true when field currents are those of the main rotor
 * @param nominalRpm nominal speed, r/min; empty when the plate does not say it: voltages then stand as read
 * @param stored     the curve to compare with, brought to nominal speed; empty when there is none
 * @param problem    why the points make no curve, in words; empty when they do or when there are none
 */
public record RunUpCurves(List<Node> rising, List<Node> falling, List<Node> shorted, boolean mainField,
        OptionalDouble nominalRpm, List<Node> stored, String problem) {

    /** Share of the highest voltage up to which the iron counts as not saturated, for the air-gap line. */
    public static final double LOWER_PART = 0.5;

    /**
     * A point of a curve.
     *
     * @param index place in the run-up's points, -1 for a stored curve
     * @param field field current, A
     * @param value line volts at nominal speed, V, or short-circuit amps, A
     */
    public record Node(int index, double field, double value) {
    }

    public RunUpCurves {
        rising = List.copyOf(rising);
        falling = List.copyOf(falling);
        shorted = List.copyOf(shorted);
        stored = List.copyOf(stored);
    }

    /** The curves of a job; all lists are empty when it has no run-up. */
    public static RunUpCurves of(Job job, Shop shop) {
        RunUp run = job.runUp().orElse(null);
        Optional<Double> nominal = new Machine(job, shop).nominalSpeed();
        OptionalDouble rpm = nominal.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        if (run == null) {
            return new RunUpCurves(List.of(), List.of(), List.of(), false, rpm, List.of(), "");
        }
        List<RunPoint> curve = run.points().stream().filter(p -> p.kind() == RunPoint.Kind.OPEN_CIRCUIT_UP
                || p.kind() == RunPoint.Kind.OPEN_CIRCUIT_DOWN || p.kind() == RunPoint.Kind.SHORT_CIRCUIT).toList();
        boolean main = !curve.isEmpty() && curve.stream().allMatch(p -> p.mainFieldA() != null);
        List<Node> up = nodes(run, RunPoint.Kind.OPEN_CIRCUIT_UP, main, rpm);
        List<Node> down = nodes(run, RunPoint.Kind.OPEN_CIRCUIT_DOWN, main, rpm);
        List<Node> shorted = nodes(run, RunPoint.Kind.SHORT_CIRCUIT, main, rpm);
        String problem = "";
        if (!up.isEmpty()) {
            try {
                curve(up);
            } catch (OutOfRange e) {
                problem = e.getMessage();
            }
        }
        return new RunUpCurves(up, down, shorted, main, rpm, stored(run, rpm), problem);
    }

    private static List<Node> nodes(RunUp run, RunPoint.Kind kind, boolean main, OptionalDouble nominal) {
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < run.points().size(); i++) {
            RunPoint p = run.points().get(i);
            Double field = main ? p.mainFieldA() : p.exciterA();
            boolean shorted = kind == RunPoint.Kind.SHORT_CIRCUIT;
            List<Double> volts = p.lineVolts() == null ? List.of() : p.lineVolts().values();
            if (p.kind() != kind || field == null || field < 0 || (shorted ? p.loadA() == null : volts.isEmpty())) {
                continue;
            }
            if (shorted) {
                nodes.add(new Node(i, field, p.loadA()));
                continue;
            }
            double mean = volts.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
            boolean known = nominal.isPresent() && p.speedRpm() != null && p.speedRpm() > 0 && mean >= 0;
            nodes.add(new Node(i, field, known ? VoltageAtSpeed.of(mean, p.speedRpm(), nominal.getAsDouble()).linear() : mean));
        }
        nodes.sort(Comparator.comparingDouble(Node::field));
        return nodes;
    }

    private static List<Node> stored(RunUp run, OptionalDouble nominal) {
        if (run.storedCurve() == null) {
            return List.of();
        }
        Double speed = run.storedCurve().speedRpm();
        double factor = speed == null || !(speed > 0) || nominal.isEmpty() ? 1 : nominal.getAsDouble() / speed;
        return run.storedCurve().points().stream().filter(p -> p.fieldA() != null && p.lineV() != null)
                .map(p -> new Node(-1, p.fieldA(), p.lineV() * factor)).sorted(Comparator.comparingDouble(Node::field))
                .toList();
    }

    /** The open-circuit curve through the rising points; empty when they make none. */
    public Optional<OpenCircuitCurve> openCircuit() {
        return attempt(() -> curve(rising));
    }

    /** The stored curve; empty when there is none. */
    public Optional<OpenCircuitCurve> storedCurve() {
        return attempt(() -> curve(stored));
    }

    /** The short-circuit line; empty when no point was taken. */
    public Optional<ShortCircuitLine> shortCircuit() {
        return attempt(() -> ShortCircuitLine.through(shorted.stream()
                .map(n -> new double[] {n.field(), n.value()}).toArray(double[][]::new)));
    }

    /** Slope of the air-gap line, line volts per field ampere; empty when no point lies in the unsaturated part. */
    public OptionalDouble airGapSlope() {
        return openCircuit().flatMap(c -> attempt(() -> c.airGapSlope(LOWER_PART))).map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static OpenCircuitCurve curve(List<Node> nodes) {
        return OpenCircuitCurve.of(nodes.stream().map(n -> new double[] {n.field(), n.value()}).toArray(double[][]::new));
    }

    /** What a calculation refuses does not exist for these points. */
    static <T> Optional<T> attempt(java.util.function.Supplier<T> calculation) {
        try {
            return Optional.of(calculation.get());
        } catch (OutOfRange e) {
            return Optional.empty();
        }
    }
}

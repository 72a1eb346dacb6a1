package org.copperbook.calc.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.EqualCoils;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.calc.winding.capture.CaptureCheck;
import org.copperbook.calc.winding.capture.CaptureReading;
import org.copperbook.calc.winding.capture.CaptureReport;
import org.copperbook.calc.winding.capture.CaptureUncertainty;
import org.copperbook.calc.winding.capture.CapturedWinding;
import org.copperbook.calc.wire.WireSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Capture check of a winding of 72 coils with every group, phase and the mass read, beside a plain scan that takes a
 * multivariate normal density anew for every coil and sign of a turn slip.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CaptureBenchmark {
    private final Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(72, 8, 3, 8, 9));
    private final ConductorBundle bundle = ConductorBundle.copper(4, WireSize.metric(0.9));
    private final CapturedWinding captured = new CapturedWinding(winding, CircuitPlan.equal(winding, 2), bundle, 0.62,
            24);
    private final List<CaptureReading> readings = readings();

    private List<CaptureReading> readings() {
        List<CaptureReading> list = new ArrayList<>();
        EqualCoils coils = new EqualCoils(24, 9, 0.62, bundle, 2);
        for (int group : winding.groups()) {
            list.add(new CaptureReading.OfGroup(group, coils.coilResistance(24) * (group == 7 ? 26 / 9.0 : 3), 0.002));
        }
        for (int phase = 1; phase <= 3; phase++) {
            list.add(new CaptureReading.OfPhase(phase, coils.phaseResistance(24), 0.002));
        }
        list.add(new CaptureReading.OfMass(coils.mass(3), 0.012));
        return list;
    }

    @Benchmark
    public CaptureReport library() {
        return CaptureCheck.check(captured, readings, CaptureUncertainty.usual());
    }

    @Benchmark
    public double scanOfDensities() {
        int n = readings.size();
        double[] y = new double[n];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            y[i] = Math.log(readings.get(i).value());
            for (int j = 0; j < n; j++) {
                covariance[i][j] = 4e-4 + (i == j ? 4e-5 : 0);
            }
        }
        double best = 0;
        for (int coil = 0; coil < winding.coils().size(); coil++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double[] mean = new double[n];
                for (int i = 0; i < n; i++) {
                    mean[i] = y[i];
                }
                mean[winding.coils().get(coil).group() - 1] += sign / 27.0;
                best = Math.max(best, new MultivariateNormalDistribution(mean, covariance).density(y));
            }
        }
        return best;
    }
}

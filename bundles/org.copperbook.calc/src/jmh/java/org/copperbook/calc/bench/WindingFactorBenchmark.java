package org.copperbook.calc.bench;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.complex.Complex;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Winding factors of a winding of 108 slots in 12 poles up to the 50th harmonic, beside a plain sum of complex numbers.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WindingFactorBenchmark {
    private static final int ORDERS = 50;
    private final Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(108, 12, 3, 8, 6));

    @Benchmark
    public double[][] library() {
        return new WindingFactors(winding).table(ORDERS);
    }

    @Benchmark
    public double[][] plainComplexSum() {
        double[][] factors = new double[3][ORDERS];
        double slot = 2 * Math.PI * winding.polePairs() / winding.slots();
        for (int phase = 1; phase <= 3; phase++) {
            for (int order = 1; order <= ORDERS; order++) {
                Complex sum = Complex.ZERO;
                double turns = 0;
                for (Coil coil : winding.coils()) {
                    if (coil.phase() == phase) {
                        Complex go = new Complex(0, order * slot * coil.goSlot()).exp();
                        Complex back = new Complex(0, order * slot * coil.returnSlot()).exp();
                        sum = sum.add(go.subtract(back).multiply(coil.sense() * coil.turns() / 2));
                        turns += coil.turns();
                    }
                }
                factors[phase - 1][order - 1] = sum.abs() / turns;
            }
        }
        return factors;
    }
}

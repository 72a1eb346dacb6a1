package org.copperbook.calc.bench;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.copperbook.calc.winding.memory.Figure;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.calc.winding.memory.PastWinding;
import org.copperbook.calc.winding.memory.PastWindings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The ten nearest of a million past windings, beside a plain scan of every row. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PastWindingsBenchmark {
    private static final int ROWS = 1_000_000;
    private static final int WANTED = 10;
    /** Whether the bore of the machine asked for is known; without it the index must look at every row. */
    @Param({"true", "false"})
    private boolean boreKnown;
    private double[][] columns;
    private PastWindings index;
    private MachineFigures asked;

    @Setup
    public void fill() {
        Random random = new Random(11);
        columns = new double[6][ROWS];
        for (int i = 0; i < ROWS; i++) {
            columns[0][i] = 1000 * Math.exp(random.nextDouble() * 7);
            columns[1][i] = 2 * (1 + random.nextInt(6));
            columns[2][i] = 12 * (2 + random.nextInt(9));
            columns[3][i] = 0.06 * Math.exp(random.nextDouble() * 2.5);
            columns[4][i] = random.nextInt(20) == 0 ? Double.NaN : 0.05 * Math.exp(random.nextDouble() * 2.5);
            columns[5][i] = 110 * (1 + random.nextInt(6));
        }
        index = PastWindings.ofColumns(columns);
        asked = new MachineFigures(63e3, 4, 48, boreKnown ? 0.27 : Double.NaN, 0.24, 400);
    }

    @Benchmark
    public List<PastWinding> library() {
        return index.nearest(asked, WANTED);
    }

    @Benchmark
    public Object plainScan() {
        double[] target = {asked.rating(), asked.poles(), asked.slots(), asked.bore(), asked.length(), asked.volts()};
        PriorityQueue<double[]> worstFirst = new PriorityQueue<>(Comparator.comparingDouble((double[] d) -> d[0])
                .reversed());
        for (int i = 0; i < ROWS; i++) {
            double sum = 0;
            for (Figure figure : Figure.values()) {
                int f = figure.ordinal();
                if (!Double.isNaN(target[f])) {
                    double ratio = Double.isNaN(columns[f][i]) ? 1.5 : columns[f][i] / target[f];
                    double difference = figure.weight() * Math.log(ratio);
                    sum += difference * difference;
                }
            }
            if (worstFirst.size() < WANTED) {
                worstFirst.add(new double[] {sum, i});
            } else if (sum < worstFirst.peek()[0]) {
                worstFirst.poll();
                worstFirst.add(new double[] {sum, i});
            }
        }
        return worstFirst;
    }
}

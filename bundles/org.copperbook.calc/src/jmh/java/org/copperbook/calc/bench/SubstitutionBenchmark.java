package org.copperbook.calc.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.StockedWire;
import org.copperbook.calc.wire.Substitute;
import org.copperbook.calc.wire.Substitution;
import org.copperbook.calc.wire.SubstitutionWish;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.calc.wire.WireSizes;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The ten best substitutes from 80 stocked sizes, up to three sizes and twelve strands, beside trying every
 * combination.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SubstitutionBenchmark {
    private static final int STRANDS = 12;
    private static final int WANTED = 10;
    /** Step of area that ranks as equal: 0 ranks by area alone and leaves the search no early end. */
    @Param({"0.005", "0"})
    private double step;
    private List<StockedWire> stock;
    private SubstitutionWish wish;

    @Setup
    public void fillTheShelf() {
        List<WireSize> sizes = new ArrayList<>(WireSizes.metric());
        sizes.addAll(WireSizes.awg());
        sizes.addAll(WireSizes.swg());
        sizes.removeIf(s -> s.bareDiameter() < 0.25e-3 || s.bareDiameter() > 2.7e-3);
        stock = sizes.stream().limit(80).map(s -> new StockedWire(s, InsulationGrade.GRADE_2, 12)).toList();
        if (stock.size() != 80) {
            throw new IllegalStateException("the shelf holds " + stock.size() + " sizes");
        }
        wish = SubstitutionWish.of(6 * WireSize.awg(15).area(), STRANDS).withLength(300).withSquareSum(16e-6)
                .withAreaStep(step);
    }

    @Benchmark
    public List<Substitute> library() {
        return Substitution.best(stock, wish, WANTED);
    }

    /** Three nested loops over sizes and over strands, all hits kept and sorted. */
    @Benchmark
    public List<double[]> everyCombination() {
        List<double[]> hits = new ArrayList<>();
        int n = stock.size();
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                for (int k = j; k < n; k++) {
                    for (int a = 1; a <= STRANDS; a++) {
                        for (int b = j == i ? 0 : 1; b <= (j == i ? 0 : STRANDS - a); b++) {
                            for (int c = k == j ? 0 : 1; c <= (k == j ? 0 : STRANDS - a - b); c++) {
                                keep(i, a, j, b, k, c, hits);
                            }
                        }
                    }
                }
            }
        }
        hits.sort(Comparator.comparingDouble((double[] h) -> h[0]).thenComparingDouble(h -> h[1]));
        return hits.subList(0, Math.min(WANTED, hits.size()));
    }

    private void keep(int i, int a, int j, int b, int k, int c, List<double[]> hits) {
        double area = a * area(i) + b * area(j) + c * area(k);
        double error = area / wish.area() - 1;
        if (error < wish.lowest() || error > wish.highest()) {
            return;
        }
        double squares = a * square(i) + b * square(j) + c * square(k);
        if (squares <= wish.largestSquareSum() && enough(i, a) && enough(j, b) && enough(k, c)) {
            double rank = wish.areaStep() == 0 ? Math.abs(error) : Math.round(Math.abs(error) / wish.areaStep());
            hits.add(new double[] {rank, a + b + c, i, a, j, b, k, c});
        }
    }

    private double area(int i) {
        return stock.get(i).size().area();
    }

    private double square(int i) {
        double overall = stock.get(i).size().overallDiameter(InsulationGrade.GRADE_2).maximum();
        return overall * overall;
    }

    private boolean enough(int i, int strands) {
        return strands * area(i) * 8890 * wish.length() <= stock.get(i).kilograms();
    }
}

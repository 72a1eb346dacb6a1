package org.copperbook.calc.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SubstitutionTest {

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Oracle: try every combination of up to three sizes, keep what the wish allows, and sort. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithTryingEveryCombination(int seed) {
        Random random = new Random(seed);
        List<StockedWire> stock = shelf(random, 4 + random.nextInt(7));
        SubstitutionWish wish = wish(random);
        List<Plain> all = everyCombination(stock, wish);
        int wanted = 1 + random.nextInt(12);
        List<Substitute> best = Substitution.best(stock, wish, wanted);
        assertEquals(Math.min(wanted, all.size()), best.size());
        for (int i = 0; i < best.size(); i++) {
            Plain expected = all.get(i);
            Substitute found = best.get(i);
            assertEquals(expected.step, step(found.areaError(), wish), 1e-9, "place " + i);
            assertEquals(expected.strands, found.strands(), "place " + i);
            assertEquals(expected.sizes, found.parts().size(), "place " + i);
            assertEquals(expected.left, found.leastStockLeft(), 1e-9, "place " + i);
            assertEquals(Math.abs(expected.error), Math.abs(found.areaError()), 1e-12, "place " + i);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverLeavesItsLimits(int seed) {
        Random random = new Random(1000 + seed);
        List<StockedWire> stock = shelf(random, 40);
        SubstitutionWish wish = wish(random);
        for (Substitute found : Substitution.best(stock, wish, 50)) {
            assertTrue(found.areaError() >= wish.lowest() - 1e-9 && found.areaError() <= wish.highest() + 1e-9);
            assertTrue(found.strands() <= wish.mostStrands());
            assertTrue(found.parts().size() <= wish.mostSizes());
            assertTrue(found.squareSum() <= wish.largestSquareSum() * (1 + 1e-9));
            assertTrue(found.leastStockLeft() >= -1e-9);
            double area = found.parts().stream().mapToDouble(p -> p.count() * p.wire().size().area()).sum();
            assertEquals(wish.area() * (1 + found.areaError()), area, area * 1e-12);
        }
    }

    /**
     * Geometry: 1 x 2.00 mm has the area of 4 x 1.00 mm; 2 x 1.40 mm is 2 % less (ANSI/EASA AR100: area not less than
     * original).
     */
    @Test
    void fourStrandsOfOneMillimetreReplaceOneOfTwo() {
        List<StockedWire> stock = List.of(new StockedWire(WireSize.metric(1.0), InsulationGrade.GRADE_2, 20),
                new StockedWire(WireSize.metric(1.4), InsulationGrade.GRADE_2, 20));
        List<Substitute> best = Substitution.best(stock, SubstitutionWish.of(WireSize.metric(2).area(), 6), 5);
        assertEquals("4 x 1.00 mm", best.get(0).label());
        assertFalse(best.get(0).underOriginal());
        List<Substitute> wider = Substitution.best(stock.subList(1, 2),
                SubstitutionWish.of(WireSize.metric(2).area(), 6)
                .withBand(-0.03, 0.03), 5);
        assertEquals("2 x 1.40 mm", wider.get(0).label());
        assertTrue(wider.get(0).underOriginal());
        assertEquals(-0.02, wider.get(0).areaError(), 1e-9);
    }

    private static List<StockedWire> shelf(Random random, int count) {
        List<WireSize> sizes = new ArrayList<>(WireSizes.metric());
        sizes.addAll(WireSizes.awg());
        sizes.removeIf(s -> s.bareDiameter() < 0.3e-3 || s.bareDiameter() > 2.2e-3);
        java.util.Collections.shuffle(sizes, random);
        return sizes.stream().limit(count)
                .map(s -> new StockedWire(s, random.nextBoolean() ? InsulationGrade.GRADE_1 : InsulationGrade.GRADE_2,
                        random.nextInt(8) == 0 ? 0 : random.nextDouble() * 25)).toList();
    }

    private static SubstitutionWish wish(Random random) {
        double area = (0.5 + 8 * random.nextDouble()) * 1e-6;
        SubstitutionWish wish = SubstitutionWish.of(area, 2 + random.nextInt(7)).withSizes(1 + random.nextInt(3));
        if (random.nextBoolean()) {
            wish = wish.withBand(-0.05, 0.08);
        }
        if (random.nextBoolean()) {
            wish = wish.withLength(100 + 600 * random.nextDouble());
        }
        if (random.nextBoolean()) {
            wish = wish.withSquareSum(area * (1.3 + 0.5 * random.nextDouble()));
        }
        return random.nextInt(4) == 0 ? wish.withAreaStep(0) : wish;
    }

    private static double step(double error, SubstitutionWish wish) {
        return wish.areaStep() == 0 ? Math.abs(error) : Math.round(Math.abs(error) / wish.areaStep());
    }

    private static List<Plain> everyCombination(List<StockedWire> stock, SubstitutionWish wish) {
        List<Plain> all = new ArrayList<>();
        int[] counts = new int[stock.size()];
        descend(stock, wish, counts, 0, 0, 0, all);
        all.sort(Comparator.comparingDouble((Plain p) -> p.step).thenComparingInt(p -> p.strands)
                .thenComparingInt(p -> p.sizes)
                .thenComparing(Comparator.comparingDouble((Plain p) -> p.left).reversed())
                .thenComparingDouble(p -> Math.abs(p.error)));
        return all;
    }

    private static void descend(List<StockedWire> stock, SubstitutionWish wish, int[] counts, int at, int strands,
            int sizes,
            List<Plain> all) {
        if (at == stock.size()) {
            if (strands > 0) {
                keep(stock, wish, counts, strands, sizes, all);
            }
            return;
        }
        for (int n = 0; n <= wish.mostStrands() - strands; n++) {
            if (n > 0 && sizes == wish.mostSizes()) {
                break;
            }
            counts[at] = n;
            descend(stock, wish, counts, at + 1, strands + n, sizes + (n > 0 ? 1 : 0), all);
        }
        counts[at] = 0;
    }

    private static void keep(List<StockedWire> stock, SubstitutionWish wish, int[] counts, int strands, int sizes,
            List<Plain> all) {
        double area = 0;
        double squares = 0;
        double left = Double.POSITIVE_INFINITY;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                StockedWire wire = stock.get(i);
                double overall = wire.size().overallDiameter(wire.grade()).maximum();
                area += counts[i] * wire.size().area();
                squares += counts[i] * overall * overall;
                left = Math.min(left, wire.kilograms() - counts[i] * wish.length() * wire.size().area() * 8890);
                if (wire.kilograms() == 0) {
                    return;
                }
            }
        }
        double error = area / wish.area() - 1;
        if (error >= wish.lowest() && error <= wish.highest() && squares <= wish.largestSquareSum() && left >= 0) {
            all.add(new Plain(step(error, wish), strands, sizes, left, error));
        }
    }

    private record Plain(double step, int strands, int sizes, double left, double error) {
    }
}

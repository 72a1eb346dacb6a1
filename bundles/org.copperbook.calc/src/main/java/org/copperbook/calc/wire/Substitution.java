package org.copperbook.calc.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.copperbook.calc.Require;

/**
 * Finds the best combinations of up to three stocked sizes for a copper area. The search is exact: every combination
 * inside the band is either looked at or proved to rank behind those kept.
 *
 * <p>Rank: area error in steps of the wish, then strands, then sizes, then stock left (more is better), then the exact
 * area error.
 *
 * <p>How it stays quick: strands are added one by one; for a given split of strands on three sizes, two of them fix a
 * narrow window for the third, which moves one way only as the second grows thicker, so a pointer follows it through
 * the sorted list. Once enough combinations of the best step have been found, more strands cannot rank before them.
 */
public final class Substitution {
    private final SubstitutionWish wish;
    private final int wanted;
    private final StockedWire[] wires;
    private final double[] area;
    private final double[] square;
    private final int[] most;
    private final double[] kilogramsPerStrand;
    private final double low;
    private final double high;
    private final PriorityQueue<Found> worstFirst = new PriorityQueue<>(Found.RANK.reversed());

    private Substitution(List<StockedWire> stock, SubstitutionWish wish, int wanted) {
        this.wish = wish;
        this.wanted = wanted;
        wires = stock.stream().filter(w -> strandsInStock(w, wish) > 0)
                .sorted(Comparator.comparingDouble(w -> w.size().area())).toArray(StockedWire[]::new);
        area = Arrays.stream(wires).mapToDouble(w -> w.size().area()).toArray();
        square = Arrays.stream(wires).mapToDouble(Substitution::square).toArray();
        most = Arrays.stream(wires).mapToInt(w -> strandsInStock(w, wish)).toArray();
        kilogramsPerStrand = Arrays.stream(wires).mapToDouble(w -> w.size().kilogramsPerMetre() * wish.length())
                .toArray();
        low = wish.area() * (1 + wish.lowest()) * (1 - 1e-12);
        high = wish.area() * (1 + wish.highest()) * (1 + 1e-12);
    }

    private static double square(StockedWire wire) {
        double overall = wire.grade() == InsulationGrade.BARE ? wire.size().bareDiameter()
                : wire.size().overallDiameter(wire.grade()).maximum();
        return overall * overall;
    }

    private static int strandsInStock(StockedWire wire, SubstitutionWish wish) {
        if (wish.length() == 0) {
            return wire.kilograms() > 0 ? wish.mostStrands() : 0;
        }
        double each = wire.size().kilogramsPerMetre() * wish.length();
        return (int) Math.min(wish.mostStrands(), Math.floor(wire.kilograms() / each * (1 + 1e-12)));
    }

    /**
     * @param stock wires on the shelf, up to 1000; each entry counts as one size
     * @param wish what the substitute must keep to
     * @param wanted how many results, 1 to 1000
     * @return the best combinations, best first; fewer or none when the shelf does not hold more
     */
    public static List<Substitute> best(List<StockedWire> stock, SubstitutionWish wish, int wanted) {
        Require.between("stocked wires", stock.size(), 0, 1000, "a longer shelf is not one workshop's");
        Require.between("results wanted", wanted, 1, 1000, "nobody reads more");
        return new Substitution(stock, wish, wanted).search();
    }

    private List<Substitute> search() {
        if (wires.length == 0) {
            return List.of();
        }
        for (int strands = 1; strands <= wish.mostStrands(); strands++) {
            if (strands * area[area.length - 1] < low) {
                continue;
            }
            if (strands * area[0] > high || onlyBestStepKept()) {
                break;
            }
            singles(strands);
            if (wish.mostSizes() >= 2) {
                pairs(strands);
            }
            if (wish.mostSizes() >= 3) {
                triples(strands);
            }
        }
        List<Found> kept = new ArrayList<>(worstFirst);
        kept.sort(Found.RANK);
        return kept.stream().map(this::substitute).toList();
    }

    /** With the list full of the best step, a later combination has more strands and so ranks behind all of them. */
    private boolean onlyBestStepKept() {
        return wish.areaStep() > 0 && worstFirst.size() == wanted && worstFirst.peek().step == 0;
    }

    private void singles(int strands) {
        for (int i = 0; i < area.length; i++) {
            double sum = strands * area[i];
            if (sum > high) {
                break;
            }
            if (sum >= low) {
                offer(i, strands, -1, 0, -1, 0);
            }
        }
    }

    private void pairs(int strands) {
        for (int n = 1; n < strands; n++) {
            int m = strands - n;
            int first = area.length;
            for (int i = 0; i < area.length; i++) {
                double rest = n * area[i];
                while (first > 0 && rest + m * area[first - 1] >= low) {
                    first--;
                }
                for (int j = Math.max(first, i + 1); j < area.length && rest + m * area[j] <= high; j++) {
                    offer(i, n, j, m, -1, 0);
                }
            }
        }
    }

    private void triples(int strands) {
        for (int a = 1; a <= strands - 2; a++) {
            for (int b = 1; b <= strands - a - 1; b++) {
                int c = strands - a - b;
                for (int i = 0; i < area.length - 2; i++) {
                    if (strands * area[i] > high) {
                        break;
                    }
                    if (most[i] >= a) {
                        triples(i, a, b, c);
                    }
                }
            }
        }
    }

    private void triples(int i, int a, int b, int c) {
        double base = a * area[i];
        int first = area.length;
        for (int j = i + 1; j < area.length - 1; j++) {
            double rest = base + b * area[j];
            if (rest + c * area[j + 1] > high) {
                break;
            }
            while (first > 0 && rest + c * area[first - 1] >= low) {
                first--;
            }
            for (int k = Math.max(first, j + 1); k < area.length && rest + c * area[k] <= high; k++) {
                offer(i, a, j, b, k, c);
            }
        }
    }

    private void offer(int i, int a, int j, int b, int k, int c) {
        if (a > most[i] || j >= 0 && b > most[j] || k >= 0 && c > most[k]) {
            return;
        }
        double sum = a * area[i] + (j < 0 ? 0 : b * area[j]) + (k < 0 ? 0 : c * area[k]);
        double error = sum / wish.area() - 1;
        long step = wish.areaStep() == 0 ? 0 : Math.round(Math.abs(error) / wish.areaStep());
        int strands = a + b + c;
        Found worst = worstFirst.size() < wanted ? null : worstFirst.peek();
        if (worst != null && wish.areaStep() > 0
                && (step > worst.step || step == worst.step && strands > worst.strands)) {
            return;
        }
        double squares = a * square[i] + (j < 0 ? 0 : b * square[j]) + (k < 0 ? 0 : c * square[k]);
        if (squares > wish.largestSquareSum() * (1 + 1e-12)) {
            return;
        }
        double left = left(i, a);
        left = j < 0 ? left : Math.min(left, left(j, b));
        left = k < 0 ? left : Math.min(left, left(k, c));
        int sizes = 1 + (j < 0 ? 0 : 1) + (k < 0 ? 0 : 1);
        Found found = new Found(i, a, j, b, k, c, wish.areaStep() == 0 ? Math.abs(error) : step, strands, sizes, left,
                error, squares);
        if (worst == null) {
            worstFirst.add(found);
        } else if (Found.RANK.compare(found, worst) < 0) {
            worstFirst.poll();
            worstFirst.add(found);
        }
    }

    private double left(int i, int strands) {
        return wires[i].kilograms() - strands * kilogramsPerStrand[i];
    }

    private Substitute substitute(Found found) {
        List<Substitute.Part> parts = new ArrayList<>();
        addPart(parts, found.i, found.a);
        addPart(parts, found.j, found.b);
        addPart(parts, found.k, found.c);
        parts.sort(Comparator.comparingDouble((Substitute.Part p) -> p.wire().size().area()).reversed());
        return new Substitute(parts, found.strands, found.error, found.squares, found.left);
    }

    private void addPart(List<Substitute.Part> parts, int index, int count) {
        if (index >= 0) {
            parts.add(new Substitute.Part(count, wires[index], count * kilogramsPerStrand[index]));
        }
    }

    /** A combination by its places in the sorted list. */
    private record Found(int i, int a, int j, int b, int k, int c, double step, int strands, int sizes, double left,
            double error,
            double squares) {
        static final Comparator<Found> RANK = Comparator.comparingDouble(Found::step).thenComparingInt(Found::strands)
                .thenComparingInt(Found::sizes).thenComparing(Comparator.comparingDouble(Found::left).reversed())
                .thenComparingDouble(f -> Math.abs(f.error)).thenComparingInt(Found::i).thenComparingInt(Found::j)
                .thenComparingInt(Found::a).thenComparingInt(Found::b);
    }
}

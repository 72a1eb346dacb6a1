package org.copperbook.calc.winding.memory;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.Require;

/**
 * An index of past windings in plain arrays, for a million rows and more. Rows are kept in the order of their bore:
 * from the place of the bore asked for the search walks both ways and stops where the bore alone is farther off than
 * the nearest found so far, so that it sees few rows and yet misses none.
 *
 * <p>Distance is the root of the weighted squares of the logarithms of the ratios. A figure unknown in a past winding
 * counts as a ratio of 1.5 (common practice, no source); one unknown in the question does not count.
 */
public final class PastWindings {
    private static final int FIGURES = Figure.values().length;
    private static final int SORTED = Figure.BORE.ordinal();
    private static final double UNKNOWN = Math.log(1.5);
    private static final double[] WEIGHTS = Arrays.stream(Figure.values()).mapToDouble(Figure::weight).toArray();

    /** Weighted logarithms, one row after another in the order of the bore. */
    private final float[] scaled;
    private final int[] row;
    private final int knownBore;
    private final double[][] values;

    private PastWindings(double[][] values) {
        this.values = values;
        int n = values[0].length;
        double[] bore = values[SORTED];
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> Double.isNaN(bore[i]) ? Double.POSITIVE_INFINITY : bore[i]));
        row = new int[n];
        scaled = new float[n * FIGURES];
        int known = 0;
        for (int i = 0; i < n; i++) {
            row[i] = order[i];
            known += Double.isNaN(bore[row[i]]) ? 0 : 1;
            for (int f = 0; f < FIGURES; f++) {
                scaled[i * FIGURES + f] = (float) (WEIGHTS[f] * Math.log(values[f][row[i]]));
            }
        }
        knownBore = known;
    }

    /**
     * Builds the index.
     *
     * @param machines figures of the past windings; each known figure above 0
     * @return index over their rows
     */
    public static PastWindings of(List<MachineFigures> machines) {
        double[][] values = new double[FIGURES][machines.size()];
        for (int i = 0; i < machines.size(); i++) {
            double[] one = machines.get(i).values();
            for (int f = 0; f < FIGURES; f++) {
                values[f][i] = one[f];
            }
        }
        return ofColumns(values);
    }

    /**
     * Builds the index from columns.
     *
     * @param columns values in SI by figure in the order of {@link Figure}, all of one length; not a number where
     *     unknown
     * @return index over their rows
     */
    public static PastWindings ofColumns(double[][] columns) {
        Require.between("columns of past windings", columns.length, FIGURES, FIGURES,
                "there is one column for each figure");
        double[][] copy = new double[FIGURES][];
        for (int f = 0; f < FIGURES; f++) {
            Require.that(columns[f].length == columns[0].length, "rows of past windings",
                    Integer.toString(columns[f].length),
                    Integer.toString(columns[0].length), "all columns have the same rows");
            copy[f] = columns[f].clone();
            for (double value : copy[f]) {
                Require.that(Double.isNaN(value) || value > 0, Figure.values()[f].inWords(), Double.toString(value),
                        "values above 0", "a known figure of a machine is positive");
            }
        }
        return new PastWindings(copy);
    }

    /** @return number of past windings */
    public int size() {
        return row.length;
    }

    /**
     * @param asked figures of the machine on the bench; unknown ones do not count, at least one is known
     * @param wanted how many, 1 to 1000
     * @return nearest past windings, nearest first; equal distances in the order of the rows
     */
    public List<PastWinding> nearest(MachineFigures asked, int wanted) {
        Require.between("past windings wanted", wanted, 1, 1000, "nobody reads more");
        double[] target = new double[FIGURES];
        double[] plain = asked.values();
        int known = 0;
        for (int f = 0; f < FIGURES; f++) {
            Require.that(Double.isNaN(plain[f]) || plain[f] > 0, Figure.values()[f].inWords(),
                    Double.toString(plain[f]),
                    "values above 0", "a known figure of a machine is positive");
            target[f] = (float) (WEIGHTS[f] * Math.log(plain[f]));
            known += Double.isNaN(plain[f]) ? 0 : 1;
        }
        Require.between("known figures", known, 1, FIGURES, "without any there is nothing to compare");
        Kept kept = new Kept(Math.min(wanted, size()));
        if (size() > 0) {
            search(target, kept);
        }
        return kept.sorted().stream().map(found -> explain(asked, found)).toList();
    }

    private void search(double[] target, Kept kept) {
        if (Double.isNaN(target[SORTED])) {
            for (int i = 0; i < row.length; i++) {
                offer(i, target, kept);
            }
            return;
        }
        for (int i = knownBore; i < row.length; i++) {
            offer(i, target, kept);
        }
        int right = firstNotBelow((float) target[SORTED]);
        int left = right - 1;
        while (left >= 0 || right < knownBore) {
            double below = left < 0 ? Double.POSITIVE_INFINITY : squared(left, target[SORTED]);
            double above = right >= knownBore ? Double.POSITIVE_INFINITY : squared(right, target[SORTED]);
            if (Math.min(below, above) > kept.limit()) {
                break;
            }
            if (below <= above) {
                offer(left--, target, kept);
            } else {
                offer(right++, target, kept);
            }
        }
    }

    private double squared(int i, double bore) {
        double difference = scaled[i * FIGURES + SORTED] - bore;
        return difference * difference;
    }

    private int firstNotBelow(float bore) {
        int low = 0;
        int high = knownBore;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (scaled[middle * FIGURES + SORTED] < bore) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void offer(int i, double[] target, Kept kept) {
        double sum = 0;
        double limit = kept.limit();
        for (int f = 0; f < FIGURES; f++) {
            double wanted = target[f];
            if (wanted == wanted) {
                float value = scaled[i * FIGURES + f];
                double difference = value == value ? value - wanted : UNKNOWN * WEIGHTS[f];
                sum += difference * difference;
                if (sum > limit) {
                    return;
                }
            }
        }
        kept.add(row[i], sum);
    }

    private PastWinding explain(MachineFigures asked, Found found) {
        double[] wanted = asked.values();
        List<PastWinding.Difference> differences = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            double mine = wanted[figure.ordinal()];
            double other = values[figure.ordinal()][found.row()];
            if (!Double.isNaN(mine) && !(mine == other)) {
                differences.add(new PastWinding.Difference(figure, mine, other, inWords(figure, mine, other)));
            }
        }
        differences.sort(Comparator.comparingDouble((PastWinding.Difference d) -> weight(d)).reversed());
        return new PastWinding(found.row(), Math.sqrt(found.squared()), differences);
    }

    private static double weight(PastWinding.Difference d) {
        double logarithm = Double.isNaN(d.found()) ? UNKNOWN : Math.abs(Math.log(d.found() / d.asked()));
        return d.figure().weight() * logarithm;
    }

    private static String inWords(Figure figure, double mine, double other) {
        if (Double.isNaN(other)) {
            return figure.inWords() + " not known";
        }
        if (figure == Figure.POLES || figure == Figure.SLOTS) {
            return String.format(Locale.ROOT, "%.0f %s against %.0f", other, figure.inWords(), mine);
        }
        return String.format(Locale.ROOT, "%s %+.1f %%", figure.inWords(), 100 * (other / mine - 1));
    }

    private record Found(int row, double squared) {
    }

    /** The nearest found so far, in order. */
    private static final class Kept {
        private final Found[] found;
        private int count;

        Kept(int wanted) {
            found = new Found[wanted];
        }

        double limit() {
            return count < found.length ? Double.POSITIVE_INFINITY : found[count - 1].squared();
        }

        void add(int row, double squared) {
            int at = count < found.length ? count : count - 1;
            if (count == found.length && !before(row, squared, found[at])) {
                return;
            }
            while (at > 0 && before(row, squared, found[at - 1])) {
                found[at] = found[at - 1];
                at--;
            }
            found[at] = new Found(row, squared);
            count = Math.min(count + 1, found.length);
        }

        private static boolean before(int row, double squared, Found other) {
            return squared < other.squared() || squared == other.squared() && row < other.row();
        }

        List<Found> sorted() {
            return Arrays.asList(found).subList(0, count);
        }
    }
}

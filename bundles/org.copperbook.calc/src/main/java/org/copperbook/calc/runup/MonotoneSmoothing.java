package org.copperbook.calc.runup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.copperbook.calc.Require;

/**
 * Points of an open-circuit curve made strictly rising: readings at one field current (up and down) are averaged, and where
 * the voltage falls although the field rises the neighbours are pooled until it does not. This is the least-squares rising
 * curve. Source: isotonic regression by pooling adjacent violators, R. E. Barlow and others, Statistical Inference under Order
 * Restrictions, 1972.
 */
public final class MonotoneSmoothing {

    private MonotoneSmoothing() {
    }

    private static final class Block {

        private double x;
        private double y;
        private double weight;

        private Block(double x, double y, double weight) {
            this.x = x;
            this.y = y;
            this.weight = weight;
        }

        private void absorb(Block other) {
            double sum = weight + other.weight;
            x = (x * weight + other.x * other.weight) / sum;
            y = (y * weight + other.y * other.weight) / sum;
            weight = sum;
        }
    }

    /** Points {field A, V} in any order, three or more; the result is sorted and strictly rising in both. */
    public static double[][] of(double[][] points) {
        Require.between("number of points", points.length, 3, 100_000, "there is nothing to smooth below three");
        double[][] sorted = points.clone();
        Arrays.sort(sorted, Comparator.comparingDouble(p -> p[0]));
        List<Block> blocks = new ArrayList<>();
        for (double[] p : sorted) {
            Block b = new Block(Require.notNegative("field current", p[0], "A"),
                    Require.notNegative("voltage", p[1], "V"), 1);
            if (!blocks.isEmpty() && blocks.get(blocks.size() - 1).x == b.x) {
                blocks.get(blocks.size() - 1).absorb(b);
            } else {
                blocks.add(b);
            }
        }
        List<Block> rising = new ArrayList<>();
        for (Block b : blocks) {
            Block current = b;
            while (!rising.isEmpty() && rising.get(rising.size() - 1).y >= current.y) {
                Block last = rising.remove(rising.size() - 1);
                last.absorb(current);
                current = last;
            }
            rising.add(current);
        }
        return rising.stream().map(b -> new double[] {b.x, b.y}).toArray(double[][]::new);
    }
}

package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.Require;

/**
 * Any network of resistances between named points, solved by node potentials (Kirchhoff): one ampere is sent in at one
 * point and taken out at the other, and the volts between them are the ohms.
 */
public final class ResistanceNetwork {
    private final Map<String, Integer> points = new HashMap<>();
    private final List<Branch> branches = new ArrayList<>();

    private record Branch(int from, int to, double ohms) {
    }

    /**
     * Adds a resistance.
     *
     * @param from one end
     * @param to other end
     * @param ohms resistance in ohm, 0 or more; 0 joins the points
     * @return this network
     */
    public ResistanceNetwork resistance(String from, String to, double ohms) {
        Require.notNegative("resistance of a branch", ohms, "ohm");
        branches.add(new Branch(point(from), point(to), ohms));
        return this;
    }

    /**
     * Joins points without resistance.
     *
     * @param names points
     * @return this network
     */
    public ResistanceNetwork join(List<String> names) {
        for (int i = 1; i < names.size(); i++) {
            resistance(names.get(0), names.get(i), 0);
        }
        return this;
    }

    private int point(String name) {
        return points.computeIfAbsent(name, unused -> points.size());
    }

    /**
     * Resistance between two points.
     *
     * @param from one point
     * @param to other point
     * @return ohm; infinite when nothing connects them
     */
    public double between(String from, String to) {
        Require.that(points.containsKey(from) && points.containsKey(to), "points", from + ", " + to,
                "the points of the network",
                "no branch ends there");
        int[] node = merged();
        int start = node[points.get(from)];
        int end = node[points.get(to)];
        if (start == end) {
            return 0;
        }
        boolean[] reached = reachedFrom(start, node);
        if (!reached[end]) {
            return Double.POSITIVE_INFINITY;
        }
        return solve(node, reached, start, end);
    }

    /** Gives points joined without resistance one number. */
    private int[] merged() {
        int[] node = new int[points.size()];
        for (int i = 0; i < node.length; i++) {
            node[i] = i;
        }
        for (Branch branch : branches) {
            if (branch.ohms == 0) {
                int keep = node[branch.from];
                int drop = node[branch.to];
                for (int i = 0; i < node.length; i++) {
                    node[i] = node[i] == drop ? keep : node[i];
                }
            }
        }
        return node;
    }

    private boolean[] reachedFrom(int start, int[] node) {
        boolean[] reached = new boolean[node.length];
        reached[start] = true;
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Branch branch : branches) {
                int a = node[branch.from];
                int b = node[branch.to];
                if (reached[a] != reached[b]) {
                    reached[a] = true;
                    reached[b] = true;
                    grew = true;
                }
            }
        }
        return reached;
    }

    private double solve(int[] node, boolean[] reached, int start, int end) {
        int[] row = new int[node.length];
        int size = 0;
        for (int i = 0; i < node.length; i++) {
            row[i] = reached[i] && node[i] == i && i != end ? size++ : -1;
        }
        double[][] matrix = new double[size][size + 1];
        for (Branch branch : branches) {
            int a = node[branch.from];
            int b = node[branch.to];
            if (a != b && reached[a]) {
                stamp(matrix, row[a], row[b], 1 / branch.ohms);
            }
        }
        matrix[row[start]][size] = 1;
        return LinearSystem.solve(matrix)[row[start]];
    }

    private static void stamp(double[][] matrix, int a, int b, double siemens) {
        if (a >= 0) {
            matrix[a][a] += siemens;
        }
        if (b >= 0) {
            matrix[b][b] += siemens;
        }
        if (a >= 0 && b >= 0) {
            matrix[a][b] -= siemens;
            matrix[b][a] -= siemens;
        }
    }
}

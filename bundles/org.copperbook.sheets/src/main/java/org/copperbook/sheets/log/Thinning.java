package org.copperbook.sheets.log;

import java.util.Arrays;

/**
 * Columns thinned for a chart while their length is not known: lowest and highest value of stretches that double in
 * length whenever there are too many of them. No peak is lost.
 */
final class Thinning {

    /** Most stretches kept; at least half as many are there at the end of a long log. */
    static final int MOST = 240;

    private final double[][] lows;
    private final double[][] highs;
    private int filled;
    private long each = 1;
    private long inLast;

    Thinning(int columns) {
        lows = new double[columns][MOST];
        highs = new double[columns][MOST];
    }

    void row(double[] values) {
        if (inLast == each || filled == 0) {
            if (filled == MOST) {
                halve();
            }
            if (inLast == each || filled == 0) {
                for (int i = 0; i < lows.length; i++) {
                    lows[i][filled] = Double.NaN;
                    highs[i][filled] = Double.NaN;
                }
                filled++;
                inLast = 0;
            }
        }
        int at = filled - 1;
        for (int i = 0; i < lows.length; i++) {
            double v = values[i];
            if (v == v) {
                lows[i][at] = lows[i][at] <= v ? lows[i][at] : v;
                highs[i][at] = highs[i][at] >= v ? highs[i][at] : v;
            }
        }
        inLast++;
    }

    private void halve() {
        for (int i = 0; i < lows.length; i++) {
            for (int k = 0; k < MOST / 2; k++) {
                lows[i][k] = smaller(lows[i][2 * k], lows[i][2 * k + 1]);
                highs[i][k] = -smaller(-highs[i][2 * k], -highs[i][2 * k + 1]);
            }
        }
        filled = MOST / 2;
        each *= 2;
        inLast = each;
    }

    private static double smaller(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
    }

    double[] lows(int column) {
        return Arrays.copyOf(lows[column], filled);
    }

    double[] highs(int column) {
        return Arrays.copyOf(highs[column], filled);
    }
}

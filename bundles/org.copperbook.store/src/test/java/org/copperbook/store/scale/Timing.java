package org.copperbook.store.scale;

import java.util.Arrays;
import java.util.Locale;

/**
 * Times of one step and of the bare query behind it, taken in turns in one run.
 *
 * @param step     what
 * @param jobs     jobs in the store
 * @param median   of the step, ms
 * @param p95      of the step, ms
 * @param bare     median of the bare query, ms
 * @param bareP95  of the bare query, ms
 */
record Timing(String step, int jobs, double median, double p95, double bare, double bareP95) {

    /** Something to be timed. */
    interface Work {
        void run(int round) throws Exception;
    }

    /**
     * @param before what is made ready for each round, not timed
     */
    static Timing of(String step, int jobs, int rounds, Work before, Work work, Work bare) throws Exception {
        // A program that has just begun says little of the store.
        int warm = rounds;
        double[] ours = new double[rounds];
        double[] theirs = new double[rounds];
        for (int i = -warm; i < rounds; i++) {
            // In turns, and the first one in turns too, so that neither always finds what the other has fetched.
            boolean first = (i & 1) == 0;
            before.run(i + warm);
            double a = first ? ms(work, i + warm) : 0;
            double b = ms(bare, i + warm);
            a = first ? a : ms(work, i + warm);
            if (i >= 0) {
                ours[i] = a;
                theirs[i] = b;
            }
        }
        return new Timing(step, jobs, at(ours, 0.5), at(ours, 0.95), at(theirs, 0.5), at(theirs, 0.95));
    }

    double ratio() {
        return median / bare;
    }

    private static double ms(Work work, int round) throws Exception {
        long begin = System.nanoTime();
        work.run(round);
        return (System.nanoTime() - begin) * 1e-6;
    }

    private static double at(double[] times, double share) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%-22s %7d jobs: median %8.2f ms, p95 %8.2f ms; bare %8.2f ms, p95 %8.2f ms;"
                + " ratio %.2f", step, jobs, median, p95, bare, bareP95, ratio());
    }
}

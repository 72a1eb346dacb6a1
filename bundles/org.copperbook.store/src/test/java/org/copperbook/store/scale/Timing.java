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

    private static final int FEW = 10;
    private static final long WARM_NANOS = 3_000_000_000L;

    /** Something to be timed. */
    interface Work {
        void run(int round) throws Exception;
    }

    /**
     * @param before what is made ready for each round, not timed
     */
    static Timing of(String step, int jobs, int rounds, Work before, Work work, Work bare) throws Exception {
        double[] ours = new double[rounds];
        double[] theirs = new double[rounds];
        int warm = 0;
        // A program that has just begun says little of the store.
        long warmUntil = System.nanoTime() + (rounds < FEW ? 0 : WARM_NANOS);
        for (int i = 0; i < rounds; i++) {
            while (i == 0 && (warm < rounds || System.nanoTime() < warmUntil)) {
                round(warm++, before, work, bare);
            }
            double[] both = round(warm + i, before, work, bare);
            ours[i] = both[0];
            theirs[i] = both[1];
        }
        return new Timing(step, jobs, at(ours, 0.5), at(ours, 0.95), at(theirs, 0.5), at(theirs, 0.95));
    }

    /** In turns, and the first one in turns too, so that neither always finds what the other has fetched. */
    private static double[] round(int round, Work before, Work work, Work bare) throws Exception {
        before.run(round);
        boolean first = (round & 1) == 0;
        double a = first ? ms(work, round) : 0;
        double b = ms(bare, round);
        return new double[] {first ? a : ms(work, round), b};
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
        return among("jobs");
    }

    /** The same where something else is counted. */
    String among(String things) {
        return String.format(Locale.ROOT, "%-22s %7d " + things + ": median %8.2f ms, p95 %8.2f ms; bare %8.2f ms, p95 %8.2f ms;"
                + " ratio %.2f", step, jobs, median, p95, bare, bareP95, ratio());
    }
}

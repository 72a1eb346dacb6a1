package org.copperbook.calc.winding.capture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * Compares what a capture implies with what was measured and ranks single slips by their probability (Bayes' rule over
 * normal errors of the logarithms, common terms carried as in JCGM 100 cl. 5.2). A slip that the readings could not
 * tell from another, because the two predictions lie within one standard deviation of each other, is reported together
 * with it.
 */
public final class CaptureCheck {
    private static final double APART = 1.0;
    private static final double NEGLIGIBLE = 1e-9;

    private final List<CaptureReading> readings;
    private final CaptureUncertainty uncertainty;
    private final Prediction prediction;
    private final ReadingCovariance covariance;
    private final List<Hypothesis> hypotheses;

    private CaptureCheck(CapturedWinding captured, List<CaptureReading> readings, CaptureUncertainty uncertainty) {
        this.readings = List.copyOf(readings);
        this.uncertainty = uncertainty;
        prediction = new Prediction(captured);
        covariance = new ReadingCovariance(captured, this.readings, prediction, uncertainty);
        hypotheses = SlipList.of(captured, this.readings, prediction, uncertainty.cleanProbability());
    }

    /**
     * @param captured winding as captured
     * @param readings what was measured, at least one reading
     * @param uncertainty what the readings share and how rare slips are
     * @return outcome
     */
    public static CaptureReport check(CapturedWinding captured, List<CaptureReading> readings,
            CaptureUncertainty uncertainty) {
        Require.that(!readings.isEmpty(), "readings", "none", "at least one", "there is nothing to compare");
        for (CaptureReading reading : readings) {
            if (reading instanceof CaptureReading.OfGroup group) {
                Require.that(captured.winding().groups().contains(group.group()), "coil group of a reading",
                        Integer.toString(group.group()), "the groups of the winding", "it has no coil");
            } else if (reading instanceof CaptureReading.OfPhase phase) {
                Require.between("phase of a reading", phase.phase(), 1, captured.winding().phases(),
                        "the winding has no further phase");
            }
        }
        return new CaptureCheck(captured, readings, uncertainty).report();
    }

    private CaptureReport report() {
        double[] deviation = new double[readings.size()];
        List<CaptureReport.Comparison> comparisons = new ArrayList<>();
        for (int i = 0; i < deviation.length; i++) {
            double predicted = prediction.asCaptured(readings.get(i));
            deviation[i] = Math.log(readings.get(i).value() / predicted);
            comparisons.add(new CaptureReport.Comparison(readings.get(i), predicted, readings.get(i)
                    .value() / predicted - 1,
                    covariance.expanded(i)));
        }
        double[] posterior = posterior(deviation);
        List<Explanation> explanations = explanations(posterior);
        boolean questioned = posterior[0] < uncertainty.alarmBelow();
        return new CaptureReport(posterior[0], questioned, explanations, comparisons,
                CaptureSentence.of(posterior[0], questioned, explanations, comparisons));
    }

    private double[] posterior(double[] deviation) {
        int n = hypotheses.size();
        double[] score = new double[n];
        double best = Double.NEGATIVE_INFINITY;
        for (int h = 0; h < n; h++) {
            Hypothesis hypothesis = hypotheses.get(h);
            score[h] = Math.log(hypothesis.prior()) - covariance.squaredDistance(difference(deviation,
                    hypothesis.shift())) / 2;
            best = Math.max(best, score[h]);
        }
        double sum = 0;
        for (int h = 0; h < n; h++) {
            score[h] = Math.exp(score[h] - best);
            sum += score[h];
        }
        for (int h = 0; h < n; h++) {
            score[h] /= sum;
        }
        return score;
    }

    private static double[] difference(double[] one, double[] other) {
        double[] result = new double[one.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = one[i] - other[i];
        }
        return result;
    }

    /** A hot reading is one cause however warm, so its steps count together and the likeliest stands for them. */
    private List<Weighed> weighed(double[] posterior) {
        List<Weighed> all = new ArrayList<>();
        Weighed hot = null;
        for (int h = 1; h < posterior.length; h++) {
            Weighed one = new Weighed(hypotheses.get(h), posterior[h], posterior[h]);
            if (one.hypothesis.slip() instanceof Slip.HotReading) {
                hot = hot == null ? one : hot.with(one);
            } else {
                all.add(one);
            }
        }
        if (hot != null) {
            all.add(hot);
        }
        all.sort(Comparator.comparingDouble((Weighed w) -> w.probability).reversed());
        return all;
    }

    private List<Explanation> explanations(double[] posterior) {
        List<Weighed> open = new ArrayList<>(weighed(posterior));
        List<Explanation> explanations = new ArrayList<>();
        double slipTotal = 1 - posterior[0];
        while (!open.isEmpty()) {
            Weighed leader = open.get(0);
            if (leader.probability < NEGLIGIBLE * slipTotal && !explanations.isEmpty()) {
                break;
            }
            List<Weighed> members = new ArrayList<>();
            for (Weighed candidate : open) {
                if (candidate == leader || indistinguishable(leader, candidate)) {
                    members.add(candidate);
                }
            }
            open.removeAll(members);
            List<Slip> slips = members.stream().map(w -> w.hypothesis.slip()).toList();
            explanations.add(new Explanation(slips, members.stream().mapToDouble(Weighed::probability).sum(),
                    PartingTests.of(slips)));
        }
        explanations.sort(Comparator.comparingDouble(Explanation::probability).reversed());
        return explanations;
    }

    private boolean indistinguishable(Weighed one, Weighed other) {
        return covariance.squaredDistance(difference(one.hypothesis.shift(), other.hypothesis.shift())) < APART;
    }

    /** A hypothesis with its probability; peak is that of the step that stands for it. */
    private record Weighed(Hypothesis hypothesis, double probability, double peak) {
        Weighed with(Weighed other) {
            boolean otherLeads = other.peak > peak;
            return new Weighed(otherLeads ? other.hypothesis : hypothesis, probability + other.probability,
                    Math.max(peak, other.peak));
        }
    }
}

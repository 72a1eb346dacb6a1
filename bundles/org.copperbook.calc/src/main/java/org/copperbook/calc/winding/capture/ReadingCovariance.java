package org.copperbook.calc.winding.capture;

import java.util.List;
import org.copperbook.calc.winding.Winding;

/**
 * Covariance of the logarithms of the readings over their predictions, as a triangular factor. What readings share
 * (mean turn, wire, temperature, the meter's gain, the spread of the coils of a group) is carried as common terms, JCGM
 * 100 cl. 5.2.
 */
final class ReadingCovariance {
    private final double[][] lower;
    private final double[] variance;

    ReadingCovariance(CapturedWinding captured, List<CaptureReading> readings, Prediction prediction,
            CaptureUncertainty u) {
        int n = readings.size();
        double[][] terms = new double[n][];
        List<Integer> groups = captured.winding().groups();
        double[] spreads = spreads(captured.winding(), groups, u);
        for (int i = 0; i < n; i++) {
            terms[i] = terms(captured, readings.get(i), groups, spreads, prediction, u);
        }
        double[][] covariance = new double[n][n];
        variance = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < terms[i].length; k++) {
                    sum += terms[i][k] * terms[j][k];
                }
                covariance[i][j] = sum;
            }
            covariance[i][i] += readings.get(i).uncertainty() * readings.get(i).uncertainty();
            variance[i] = covariance[i][i];
        }
        lower = factor(covariance);
    }

    private static double[] terms(CapturedWinding captured, CaptureReading reading, List<Integer> groups,
            double[] spreads, Prediction prediction, CaptureUncertainty u) {
        double[] terms = new double[4 + groups.size()];
        if (reading instanceof CaptureReading.OfMass) {
            terms[0] = u.meanTurn();
            terms[1] = u.area();
            return terms;
        }
        if (reading instanceof CaptureReading.OfFill) {
            terms[1] = u.area();
            return terms;
        }
        terms[0] = u.meanTurn();
        terms[1] = -u.area();
        terms[2] = u.kelvin() / (captured.bundle().material().inferredZero() + captured.celsius());
        terms[3] = u.gain();
        for (int g = 0; g < groups.size(); g++) {
            if (reading instanceof CaptureReading.OfGroup group && group.group() == groups.get(g)) {
                terms[4 + g] = spreads[g];
            } else if (reading instanceof CaptureReading.OfPhase phase) {
                terms[4 + g] = spreads[g] * prediction.shareInPhase(phase.phase(), groups.get(g));
            }
        }
        return terms;
    }

    /** Spread of the coils of each group over their mean; the same for every reading, so it is looked up once. */
    private static double[] spreads(Winding winding, List<Integer> groups, CaptureUncertainty u) {
        return groups.stream().mapToDouble(g -> u.coilSpread() / Math.sqrt(winding.coilsOfGroup(g).size())).toArray();
    }

    /** Cholesky factor. */
    private static double[][] factor(double[][] matrix) {
        int n = matrix.length;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= matrix[i][k] * matrix[j][k];
                }
                matrix[i][j] = i == j ? Math.sqrt(sum) : sum / matrix[j][j];
            }
        }
        return matrix;
    }

    /** Expanded uncertainty (factor 2) of one reading over its prediction. */
    double expanded(int reading) {
        return 2 * Math.sqrt(variance[reading]);
    }

    /** Squared distance in standard deviations. */
    double squaredDistance(double[] difference) {
        int n = difference.length;
        double[] z = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double rest = difference[i];
            for (int k = 0; k < i; k++) {
                rest -= lower[i][k] * z[k];
            }
            z[i] = rest / lower[i][i];
            sum += z[i] * z[i];
        }
        return sum;
    }
}

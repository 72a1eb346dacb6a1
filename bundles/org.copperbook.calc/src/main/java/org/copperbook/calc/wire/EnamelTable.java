package org.copperbook.calc.wire;

import java.util.Arrays;
import java.util.List;
import org.copperbook.calc.Require;
import org.copperbook.calc.Tables;

/**
 * Overall diameters of enamelled round wire by nominal conductor diameter (values in the style of IEC 60317-0-1, from
 * the table {@code enamelled-wire.csv}, which states where each row comes from). Gauge sizes lie between the tabulated
 * metric sizes; their enamel is interpolated in proportion to the logarithm of the diameter and the source says so.
 */
public final class EnamelTable {
    private static final EnamelTable STANDARD = load();

    private final double[] bare;
    private final double[] conductorTolerance;
    private final double[][] maximumIncrease;
    private final double[][] minimumIncrease;
    private final String[] source;

    private EnamelTable(List<List<String>> rows) {
        int n = rows.size();
        bare = new double[n];
        conductorTolerance = new double[n];
        maximumIncrease = new double[2][n];
        minimumIncrease = new double[2][n];
        source = new String[n];
        for (int i = 0; i < n; i++) {
            List<String> row = rows.get(i);
            bare[i] = millimetres(row.get(0));
            conductorTolerance[i] = millimetres(row.get(1));
            for (int g = 0; g < 2; g++) {
                minimumIncrease[g][i] = millimetres(row.get(2 + 2 * g));
                maximumIncrease[g][i] = millimetres(row.get(3 + 2 * g)) - bare[i];
            }
            source[i] = row.get(6);
        }
    }

    private static double millimetres(String cell) {
        return Double.parseDouble(cell) * 1e-3;
    }

    private static EnamelTable load() {
        return new EnamelTable(Tables.rows(EnamelTable.class, "enamelled-wire.csv"));
    }

    /** @return the table that travels with this library */
    public static EnamelTable standard() {
        return STANDARD;
    }

    /** @return the tabulated metric sizes in rising order, R20 and R40 series */
    public List<WireSize> sizes() {
        return Arrays.stream(bare).mapToObj(d -> WireSize.metric(Math.round(d * 1e6) / 1e3)).toList();
    }

    /**
     * Overall diameter of an insulated wire.
     *
     * @param bareDiameter nominal conductor diameter in m, 0.1 to 5 mm for insulated grades
     * @param grade enamel build
     * @return the range of the overall diameter
     */
    public OverallDiameter overall(double bareDiameter, InsulationGrade grade) {
        if (grade == InsulationGrade.BARE) {
            double tolerance = tolerance(bareDiameter);
            return new OverallDiameter(bareDiameter + tolerance, bareDiameter - tolerance, "bare conductor");
        }
        int last = bare.length - 1;
        Require.between("diameter of an enamelled conductor", bareDiameter * 1e3, bare[0] * 0.999e3,
                bare[last] * 1.001e3, "mm",
                "enamel builds are tabulated in this range");
        int g = grade.ordinal() - 1;
        double largest = bareDiameter + interpolate(maximumIncrease[g], bareDiameter);
        double least = bareDiameter - tolerance(bareDiameter) + interpolate(minimumIncrease[g], bareDiameter);
        return new OverallDiameter(largest, least, sourceOf(bareDiameter));
    }

    /**
     * Tolerance of the conductor's diameter (IEC 60317-0-1: one percent, not below 3 micrometres).
     *
     * @param bareDiameter nominal conductor diameter in m
     * @return plus or minus in m
     */
    public double tolerance(double bareDiameter) {
        int i = at(bareDiameter);
        return i >= 0 ? conductorTolerance[i] : Math.max(0.003e-3, 0.01 * bareDiameter);
    }

    private String sourceOf(double bareDiameter) {
        int i = at(bareDiameter);
        return i >= 0 ? source[i] : "between two tabulated sizes, enamel interpolated";
    }

    /** Index of the tabulated size equal to this diameter, or -1. */
    private int at(double bareDiameter) {
        for (int i = 0; i < bare.length; i++) {
            if (Math.abs(bare[i] - bareDiameter) < 0.4e-6) {
                return i;
            }
        }
        return -1;
    }

    private double interpolate(double[] values, double bareDiameter) {
        int i = 1;
        while (i < bare.length - 1 && bare[i] < bareDiameter) {
            i++;
        }
        double share = Math.log(bareDiameter / bare[i - 1]) / Math.log(bare[i] / bare[i - 1]);
        share = Math.min(1, Math.max(0, share));
        return values[i - 1] + share * (values[i] - values[i - 1]);
    }
}

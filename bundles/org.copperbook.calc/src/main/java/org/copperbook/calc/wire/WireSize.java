package org.copperbook.calc.wire;

import java.util.Locale;
import org.copperbook.calc.Require;

/**
 * One size of round wire.
 *
 * @param system how the size is named
 * @param number the gauge number (00, 000, 0000 are -1, -2, -3), or the nominal diameter in mm for the metric system
 * @param bareDiameter nominal conductor diameter in m
 */
public record WireSize(WireSystem system, double number, double bareDiameter) implements Conductor {
    private static final double AWG_BASE_DIAMETER = 0.127e-3;
    private static final double AWG_RATIO = 92.0;
    private static final double MIL = 25.4e-6;

    public WireSize {
        Require.between("round wire diameter", bareDiameter * 1e3, 0.01, 20, "mm",
                "winding wire is made in this range");
    }

    /**
     * American wire gauge by its definition {@code d = 0.127 mm x 92^((36-n)/39)} (ASTM B258).
     *
     * @param number gauge number from -3 (4/0) to 50, whole or half (half sizes are sold as magnet wire)
     * @return the size
     */
    public static WireSize awg(double number) {
        Require.between("AWG number", number, -3, 50, "", "the gauge runs from 4/0, here -3, to 50");
        Require.that(number * 2 == Math.rint(number * 2), "AWG number", Double.toString(number),
                "the whole and half sizes",
                "no other steps are made");
        return new WireSize(WireSystem.AWG, number, AWG_BASE_DIAMETER * Math.pow(AWG_RATIO, (36.0 - number) / 39.0));
    }

    /**
     * British standard wire gauge from the table of BS 3737.
     *
     * @param number gauge number from -6 (7/0) to 50
     * @return the size
     */
    public static WireSize swg(int number) {
        return new WireSize(WireSystem.SWG, number, StandardWireGauge.diameter(number));
    }

    /**
     * A metric size.
     *
     * @param millimetres nominal conductor diameter in mm, 0.01 to 20
     * @return the size
     */
    public static WireSize metric(double millimetres) {
        return new WireSize(WireSystem.METRIC, millimetres, millimetres * 1e-3);
    }

    /**
     * Reads a size as written on a card: "18SWG", "AWG 16", "4/0 AWG", "1.25mm", "1,25 mm", "0.050in".
     *
     * @param text what was written
     * @return the size
     * @throws org.copperbook.calc.OutOfRange when no size can be read; a bare number is refused since it may mean
     *     either a gauge or a diameter
     */
    public static WireSize parse(String text) {
        return WireText.read(text);
    }

    @Override
    public double area() {
        return Math.PI / 4 * bareDiameter * bareDiameter;
    }

    /** @return area in circular mils (a circle of one thousandth of an inch has one) */
    public double circularMils() {
        double mils = bareDiameter / MIL;
        return mils * mils;
    }

    /**
     * Largest overall diameter of the insulated wire.
     *
     * @param grade enamel build
     * @return diameter in m, with where the figure comes from
     */
    public OverallDiameter overallDiameter(InsulationGrade grade) {
        return EnamelTable.standard().overall(bareDiameter, grade);
    }

    @Override
    public String label() {
        return switch (system) {
            case METRIC -> trimmed(number) + " mm";
            case AWG -> "AWG " + gauge();
            case SWG -> "SWG " + gauge();
        };
    }

    private String gauge() {
        if (number != Math.rint(number)) {
            return Double.toString(number);
        }
        int n = (int) number;
        return n >= 0 ? Integer.toString(n) : (1 - n) + "/0";
    }

    private static String trimmed(double millimetres) {
        String text = String.format(Locale.ROOT, "%.4f", millimetres);
        int end = text.length();
        while (text.charAt(end - 1) == '0' && text.charAt(end - 3) != '.') {
            end--;
        }
        return text.substring(0, end);
    }
}

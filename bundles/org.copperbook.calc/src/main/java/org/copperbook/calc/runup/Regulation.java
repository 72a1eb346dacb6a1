package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * Voltage regulation of an alternator, (no-load - full-load)/full-load volts at one excitation, by the methods of the books.
 * Phase values throughout; lagging power factors are given with LAG. Sources: I. L. Kosow, Electric Machinery and Transformers,
 * chapter 6 (synchronous impedance); A. S. Langsdorf, Theory of Alternating-Current Machinery, chapter 10 (ampere-turn and
 * zero-power-factor methods); ANSI C50.10 / IEEE 115 (ASA).
 */
public final class Regulation {

    private Regulation() {
    }

    /** Which way the current is displaced. */
    public enum Side {
        LAG, LEAD
    }

    /**
     * A load at rated terminal voltage.
     *
     * @param phaseVolts terminal voltage of a phase, V
     * @param amperes phase current, A
     * @param powerFactor 0 to 1
     */
    public record Load(double phaseVolts, double amperes, double powerFactor, Side side) {

        public Load {
            Require.positive("terminal voltage", phaseVolts, "V");
            Require.notNegative("current", amperes, "A");
            Require.between("power factor", powerFactor, 0, 1, "", "it is a cosine");
        }

        /** Positive sine for a lagging current. */
        double sine() {
            double s = Math.sqrt(1 - powerFactor * powerFactor);
            return side == Side.LAG ? s : -s;
        }
    }

    /** (noLoad - fullLoad)/fullLoad, a fraction; both line or both phase volts. */
    public static double fromVolts(double noLoad, double fullLoad) {
        return Require.positive("no-load voltage", noLoad, "V")
                / Require.positive("full-load voltage", fullLoad, "V") - 1;
    }

    /** Phase voltage behind an impedance R + jX: the synchronous impedance method. */
    public static double voltsBehind(Load load, double resistance, double reactance) {
        Require.notNegative("resistance", resistance, "ohm");
        Require.notNegative("reactance", reactance, "ohm");
        double real = load.phaseVolts() * load.powerFactor() + load.amperes() * resistance;
        double imaginary = load.phaseVolts() * load.sine() + load.amperes() * reactance;
        return Math.hypot(real, imaginary);
    }

    /** Regulation by the synchronous impedance method, a fraction. Reads high: the reactance is not saturated. */
    public static double bySynchronousImpedance(Load load, double resistance, double reactance) {
        return voltsBehind(load, resistance, reactance) / load.phaseVolts() - 1;
    }

    /**
     * No-load phase voltage by the ampere-turn (field current) method. Reads low.
     *
     * @param phaseCurve open-circuit curve in phase volts
     * @param shortCircuitField field current that drives the load current into a short circuit, A
     */
    public static double voltsByAmpereTurns(Load load, double resistance, OpenCircuitCurve phaseCurve,
            double shortCircuitField) {
        double real = load.phaseVolts() + load.amperes() * resistance * load.powerFactor();
        double imaginary = -load.amperes() * resistance * load.sine();
        double e = Math.hypot(real, imaginary);
        double f1 = phaseCurve.fieldFor(e);
        double angle = Math.atan2(imaginary, real) + Math.PI / 2;
        return phaseCurve.linear(resultant(f1, angle, shortCircuitField, load));
    }

    /** What the zero-power-factor triangle gives. */
    public record PotierTriangle(double leakageReactance, double armatureField) {
    }

    /**
     * The triangle from one point of the zero-power-factor curve at rated current.
     *
     * @param zeroPowerFactorField field current at rated voltage, zero power factor lagging, rated current, A
     * @param shortCircuitField field current that drives rated current into a short circuit, A
     * @param airGapSlope phase volts per field ampere
     * @param ratedPhaseVolts V
     * @param amperes rated current, A
     */
    public static PotierTriangle potier(OpenCircuitCurve phaseCurve, double zeroPowerFactorField,
            double shortCircuitField, double airGapSlope, double ratedPhaseVolts, double amperes) {
        Require.that(zeroPowerFactorField > shortCircuitField, "zero-power-factor field current",
                zeroPowerFactorField + " A", "values above " + shortCircuitField + " A",
                "rated voltage needs more field than a short circuit");
        double start = zeroPowerFactorField - shortCircuitField;
        double low = start;
        double high = Math.min(zeroPowerFactorField, phaseCurve.fieldRange()[1]);
        Require.that(gap(phaseCurve, low, start, airGapSlope, ratedPhaseVolts) > 0
                && gap(phaseCurve, high, start, airGapSlope, ratedPhaseVolts) < 0, "zero-power-factor point",
                zeroPowerFactorField + " A", "points whose parallel to the air-gap line meets the curve",
                "the triangle does not close on this curve");
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (gap(phaseCurve, middle, start, airGapSlope, ratedPhaseVolts) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double drop = airGapSlope * (low - start);
        return new PotierTriangle(drop / amperes, zeroPowerFactorField - low);
    }

    /** No-load phase voltage by the zero-power-factor (Potier) method. */
    public static double voltsByPotier(Load load, double resistance, OpenCircuitCurve phaseCurve,
            PotierTriangle triangle) {
        double[] e = behind(load, resistance, triangle.leakageReactance());
        double f1 = phaseCurve.fieldFor(Math.hypot(e[0], e[1]));
        double angle = Math.atan2(e[1], e[0]) + Math.PI / 2;
        return phaseCurve.linear(resultant(f1, angle, triangle.armatureField(), load));
    }

    /** No-load phase voltage by the ASA method: air-gap field vector plus the saturation increment behind the leakage. */
    public static double voltsByAsa(Load load, double resistance, OpenCircuitCurve phaseCurve, double airGapSlope,
            double shortCircuitField, PotierTriangle triangle) {
        double real = load.phaseVolts() + load.amperes() * resistance * load.powerFactor();
        double imaginary = -load.amperes() * resistance * load.sine();
        double onLine = Math.hypot(real, imaginary) / airGapSlope;
        double angle = Math.atan2(imaginary, real) + Math.PI / 2;
        double[] e = behind(load, resistance, triangle.leakageReactance());
        double size = Math.hypot(e[0], e[1]);
        double saturation = phaseCurve.fieldFor(size) - size / airGapSlope;
        return phaseCurve.linear(resultant(onLine, angle, shortCircuitField, load) + saturation);
    }

    private static double gap(OpenCircuitCurve curve, double x, double start, double slope, double volts) {
        return curve.linear(x) - volts - slope * (x - start);
    }

    private static double[] behind(Load load, double r, double x) {
        double c = load.powerFactor();
        double s = load.sine();
        return new double[] {load.phaseVolts() + load.amperes() * (r * c + x * s), load.amperes() * (x * c - r * s)};
    }

    /** Field for the voltage (at its angle) less the armature's field, which lies along the current. */
    private static double resultant(double f1, double angle, double f2, Load load) {
        double current = -Math.atan2(load.sine(), load.powerFactor());
        return Math.hypot(f1 * Math.cos(angle) - f2 * Math.cos(current), f1 * Math.sin(angle) - f2 * Math.sin(current));
    }
}

package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;

/**
 * Ideal relations of an uncontrolled rectifier fed from a three-phase exciter armature, smooth direct current unless
 * stated. Source: N. Mohan, T. Undeland, W. Robbins, Power Electronics, chapter 5; M. H. Rashid, Power Electronics,
 * chapter 3.
 */
public enum RectifierRelations {

    /** Six diodes, full wave. */
    BRIDGE(6, 3 * Math.sqrt(2) / Math.PI),
    /** Three diodes on a common plate, half wave with neutral. */
    HALF_WAVE(3, 3 * Math.sqrt(2) / (2 * Math.PI));

    private static final double ROOT_2 = Math.sqrt(2);
    private static final double ROOT_3 = Math.sqrt(3);

    private final int pulses;
    private final double meanOverLine;

    RectifierRelations(int pulses, double meanOverLine) {
        this.pulses = pulses;
        this.meanOverLine = meanOverLine;
    }

    /** Number of diodes. */
    public int diodes() {
        return pulses;
    }

    /** Mean direct volts over line-to-line rms volts. */
    public double meanOverLineVolts() {
        return meanOverLine;
    }

    /** Mean direct volts from line-to-line rms volts. */
    public double meanVolts(double lineVolts) {
        return meanOverLine * Require.notNegative("line voltage", lineVolts, "V");
    }

    /** Line-to-line rms volts that give a mean direct voltage. */
    public double lineVolts(double meanVolts) {
        return Require.notNegative("direct voltage", meanVolts, "V") / meanOverLine;
    }

    /** Repetitive peak reverse volts on a diode: the peak of the line-to-line voltage in both circuits. */
    public double peakReverseVolts(double lineVolts) {
        return ROOT_2 * Require.notNegative("line voltage", lineVolts, "V");
    }

    /** Mean current of one diode: a third of the direct current, A. */
    public double diodeMeanAmperes(double directAmperes) {
        return Require.notNegative("direct current", directAmperes, "A") / 3;
    }

    /** Root-mean-square current of one diode with smooth direct current, A. */
    public double diodeRmsAmperes(double directAmperes) {
        return Require.notNegative("direct current", directAmperes, "A") / ROOT_3;
    }

    /** Root-mean-square line current with smooth direct current, A. */
    public double lineRmsAmperes(double directAmperes) {
        double diode = diodeRmsAmperes(directAmperes);
        return this == BRIDGE ? ROOT_2 * diode : diode;
    }

    /** Root-mean-square over mean of the ripple-free-of-load voltage wave, less the mean: the ripple factor. */
    public double rippleRmsOverMean() {
        double rms = rmsOverPeak();
        double mean = meanOverPeak();
        return Math.sqrt(rms * rms / (mean * mean) - 1);
    }

    /** Peak to peak ripple over the mean. */
    public double ripplePeakToPeakOverMean() {
        return (1 - Math.cos(Math.PI / pulses)) / meanOverPeak();
    }

    /** Mean over peak of the rectified wave. */
    public double meanOverPeak() {
        return pulses / Math.PI * Math.sin(Math.PI / pulses);
    }

    /** Root mean square over peak of the rectified wave. */
    public double rmsOverPeak() {
        return Math.sqrt(0.5 + pulses / (4 * Math.PI) * Math.sin(2 * Math.PI / pulses));
    }

    /** Root-mean-square diode current over its peak with a resistive load: the wave's rms shared by three diodes. */
    public double diodeRmsOverPeakResistive() {
        return rmsOverPeak() / ROOT_3;
    }
}

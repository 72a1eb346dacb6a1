package org.copperbook.calc.excitation;

/**
 * Figures of merit of the ideal six-diode bridge.
 * Source: M. H. Rashid, Power Electronics, chapter 3 (resistive load); N. Mohan, T. Undeland, W. Robbins, Power Electronics,
 * chapter 5 (smooth current).
 */
public final class BridgeQuality {

    private BridgeQuality() {
    }

    /** Direct power over rms power of the rectified wave, resistive load. */
    public static double efficiency() {
        double ratio = RectifierRelations.BRIDGE.meanOverPeak() / RectifierRelations.BRIDGE.rmsOverPeak();
        return ratio * ratio;
    }

    /** Rms over mean of the rectified wave. */
    public static double formFactor() {
        return RectifierRelations.BRIDGE.rmsOverPeak() / RectifierRelations.BRIDGE.meanOverPeak();
    }

    /** Direct power over volt-amperes of the feeding winding, resistive load. */
    public static double utilisation() {
        double mean = RectifierRelations.BRIDGE.meanOverPeak();
        // winding volts Um/sqrt(2) per phase with line peak sqrt(3) Um; all three phases carry the line rms current
        return Math.sqrt(3) * mean * mean / (3 / Math.sqrt(2) * lineRmsOverPeakResistive());
    }

    /** Line rms current over its peak, resistive load. */
    public static double lineRmsOverPeakResistive() {
        return Math.sqrt(2) * RectifierRelations.BRIDGE.diodeRmsOverPeakResistive();
    }

    /** Fundamental of the line current over the direct current, rms, smooth current: sqrt(6)/pi. */
    public static double fundamentalOverDirect() {
        return Math.sqrt(6) / Math.PI;
    }

    /** Power factor with smooth current: 3/pi. */
    public static double powerFactor() {
        return 3 / Math.PI;
    }

    /** Total harmonic distortion of the line current with smooth current, a fraction. */
    public static double distortion() {
        return Math.sqrt(Math.PI * Math.PI / 9 - 1);
    }
}

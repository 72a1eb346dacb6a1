package org.copperbook.calc.winding.design;

/**
 * How far the figures of a first winding may be off because its core was measured with a rule: relative standard
 * uncertainties by the law of propagation (JCGM 100, 5.1.2). The uncertainties of the measured figures are common
 * practice without a source: half a millimetre for bore, tooth and yoke, one for the length, two percent for the share
 * of iron, a tenth for the usable slot area.
 *
 * @param gap            of the flux density in the gap
 * @param tooth          of the flux density in the teeth
 * @param yoke           of the flux density in the yoke
 * @param currentDensity of the current density
 */
public record FirstWindingDoubt(double gap, double tooth, double yoke, double currentDensity) {

    private static final double RULE = 0.5e-3;
    private static final double LENGTH = 1e-3;
    private static final double STACKING = 0.02;
    private static final double SLOT_AREA = 0.10;

    /**
     * @param core core as measured
     * @return doubt of what is computed for it
     */
    public static FirstWindingDoubt of(CoreGeometry core) {
        double bore = RULE / core.bore();
        double length = LENGTH / core.length();
        // the flux of a pole follows from volts and turns: it owes nothing to the core
        double gap = Math.hypot(bore, length);
        double iron = Math.hypot(STACKING, length);
        return new FirstWindingDoubt(gap, Math.hypot(RULE / core.toothWidth(), iron),
                Math.hypot(RULE / core.yokeDepth(), iron), SLOT_AREA);
    }
}

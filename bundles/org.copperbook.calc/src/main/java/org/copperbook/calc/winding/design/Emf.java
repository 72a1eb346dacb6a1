package org.copperbook.calc.winding.design;

import java.util.List;
import org.copperbook.calc.Require;

/**
 * Electromotive force of a phase and the flux that makes it (any textbook on a.c. machines; symbols as in IEC 60027).
 */
public final class Emf {
    /** The exact constant, square root of two times pi. */
    public static final double EXACT = Math.sqrt(2) * Math.PI;
    /** The constant printed in many books, 0.065 percent lower. */
    public static final double BOOK = 4.44;

    private static final double VACUUM_PERMEABILITY = 4e-7 * Math.PI;

    private Emf() {
    }

    /**
     * {@code E = c f N kw Phi}, r.m.s.
     *
     * @param constant {@link #EXACT} or {@link #BOOK}
     * @param hertz frequency, above 0
     * @param turns turns in series per phase, above 0
     * @param windingFactor winding factor, 0 to 1
     * @param webers flux per pole, 0 or more
     * @return V per phase
     */
    public static double phase(double constant, double hertz, double turns, double windingFactor, double webers) {
        Require.notNegative("flux per pole", webers, "Wb");
        return constant * checked(hertz, turns, windingFactor) * webers;
    }

    /**
     * Flux per pole that a phase voltage needs.
     *
     * @param constant {@link #EXACT} or {@link #BOOK}
     * @param volts electromotive force of a phase in V, above 0
     * @param hertz frequency, above 0
     * @param turns turns in series per phase, above 0
     * @param windingFactor winding factor, above 0 to 1
     * @return Wb
     */
    public static double flux(double constant, double volts, double hertz, double turns, double windingFactor) {
        Require.positive("phase voltage", volts, "V");
        Require.positive("winding factor", windingFactor, "");
        return volts / (constant * checked(hertz, turns, windingFactor));
    }

    private static double checked(double hertz, double turns, double windingFactor) {
        Require.positive("frequency", hertz, "Hz");
        Require.positive("turns in series per phase", turns, "");
        Require.between("winding factor", windingFactor, 0, 1, "",
                "no winding exceeds the full-pitch concentrated one");
        return hertz * turns * windingFactor;
    }

    /**
     * Flux per pole of a sinusoidal field, {@code (2/pi) B tau L = B D L/p}.
     *
     * @param tesla peak flux density in the gap, 0 to 3
     * @param bore bore in m, above 0
     * @param length core length in m, above 0
     * @param poles number of poles
     * @return Wb
     */
    public static double fluxPerPole(double tesla, double bore, double length, int poles) {
        Require.between("gap flux density", tesla, 0, 3, "T", "iron does not carry more");
        return tesla * Require.positive("bore", bore, "m") * Require.positive("core length", length,
                "m") * 2 / Require.poles(poles);
    }

    /**
     * Peak of the fundamental gap field of a cylindrical field winding, {@code (4 mu0/(pi g)) (kf Nf/poles) If}
     * (Fitzgerald, Kingsley and Umans, Electric Machinery, ch. 4), iron neglected.
     *
     * @param gap air gap in m, above 0
     * @param turns field turns in series of all poles, above 0
     * @param factor field winding factor, 0 to 1
     * @param poles number of poles
     * @param amperes field current
     * @return T
     */
    public static double gapFieldOf(double gap, double turns, double factor, int poles, double amperes) {
        Require.positive("air gap", gap, "m");
        Require.positive("field turns", turns, "");
        Require.between("field winding factor", factor, 0, 1, "", "no winding exceeds the full-pitch concentrated one");
        return 4 * VACUUM_PERMEABILITY / (Math.PI * gap) * factor * turns / Require.poles(poles)
                * Require.finite("field current", amperes, "A");
    }

    /**
     * Electromotive forces of the harmonics of a gap field. A field of order h has {@code Bh/(B1 h)} of the working
     * flux and h times its frequency, so its electromotive force is that of the working wave times {@code (Bh/B1)
     * kwh/kw1} (Bakshi, Ex. 4.12 and 4.16).
     *
     * @param fundamental electromotive force of the working wave in V per phase
     * @param factor winding factor of the working wave, above 0
     * @param harmonics field over the working field and winding factor, by harmonic
     * @return V per phase by harmonic
     */
    public static List<Double> harmonics(double fundamental, double factor, List<FieldHarmonic> harmonics) {
        Require.positive("winding factor", factor, "");
        return harmonics.stream().map(h -> fundamental * h.field() * Math.abs(h.factor()) / factor).toList();
    }

    /**
     * A harmonic of the gap field.
     *
     * @param order order
     * @param field peak density over that of the working wave
     * @param factor winding factor of this order
     */
    public record FieldHarmonic(int order, double field, double factor) {
    }

    /**
     * Line voltage of a star of three phases, in which orders divisible by three cancel.
     *
     * @param fundamental V per phase
     * @param harmonics harmonics of the field
     * @param volts V per phase by harmonic
     * @return r.m.s. V between lines
     */
    public static double starLine(double fundamental, List<FieldHarmonic> harmonics, List<Double> volts) {
        double squares = fundamental * fundamental;
        for (int i = 0; i < harmonics.size(); i++) {
            squares += harmonics.get(i).order() % 3 == 0 ? 0 : volts.get(i) * volts.get(i);
        }
        return Math.sqrt(3 * squares);
    }
}

package org.copperbook.calc.winding.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.Require;
import org.copperbook.calc.winding.PhaseJunction;

/**
 * A winding for other volts, frequency, circuits, junction or span in the same core with the same poles.
 *
 * <p>The gap flux density is kept, so by {@code E = sqrt(2) pi f N kw Phi} the turns in series change with the phase
 * voltage and against frequency and winding factor; the copper in the slot is kept, so the conductor area changes
 * against the turns; the current density is kept, so the current of a circuit changes with its area (common practice of
 * rewinding; each step is the definition).
 *
 * @param before winding as it was
 * @param after winding with whole turns; its current is that of the old current density
 * @param exactTurns turns per coil before rounding
 * @param fluxRatio gap flux density over that before, after rounding of the turns
 * @param ratingRatio apparent power over that before
 * @param linearLoadingRatio ampere-conductors over those before
 * @param warnings what leaves the usual, in plain words
 */
public record Redesign(RatedWinding before, RatedWinding after, double exactTurns, double fluxRatio, double ratingRatio,
        double linearLoadingRatio, List<String> warnings) {
    private static final double FLUX_CHANGE = 0.03;
    private static final double ROUNDING_TURNS = 4;

    public Redesign {
        warnings = List.copyOf(warnings);
    }

    /**
     * What is to change.
     *
     * @param hertz new frequency
     * @param lineVolts new line voltage in V
     * @param junction new junction
     * @param circuits new circuits per phase
     * @param windingFactor winding factor with the new span
     */
    public record Wish(double hertz, double lineVolts, PhaseJunction junction, int circuits, double windingFactor) {
        public Wish {
            Require.positive("frequency", hertz, "Hz");
            Require.positive("line voltage", lineVolts, "V");
            Require.between("parallel circuits", circuits, 1, 100, "a phase has at least one circuit");
            Require.between("winding factor", Require.positive("winding factor", windingFactor, ""), 0, 1, "",
                    "no winding exceeds the full-pitch concentrated one");
        }
    }

    /**
     * @param before winding as it was
     * @param wish what is to change
     * @return winding for it
     */
    public static Redesign of(RatedWinding before, Wish wish) {
        double phaseVolts = wish.junction() == PhaseJunction.STAR ? wish.lineVolts() / Math.sqrt(3) : wish.lineVolts();
        double exact = before.turnsPerCoil() * phaseVolts / before.phaseVolts() * before.hertz() / wish.hertz()
                * before.windingFactor() / wish.windingFactor() * wish.circuits() / before.circuits();
        double turns = Math.max(1, Math.rint(exact));
        double area = before.conductorArea() * before.turnsPerCoil() / turns;
        double circuitCurrent = before.currentDensity() * area;
        double lineCurrent = circuitCurrent * wish.circuits() * (wish.junction() == PhaseJunction.DELTA ? Math.sqrt(3)
                : 1);
        RatedWinding after = new RatedWinding(wish.hertz(), wish.lineVolts(), wish.junction(), wish.circuits(),
                before.coilsPerPhase(), turns, wish.windingFactor(), area, lineCurrent);
        double flux = exact / turns;
        double loading = circuitCurrent * turns
                / (CurrentDensity.circuitCurrent(before.lineCurrent(), before.junction(), before.circuits())
                        * before.turnsPerCoil());
        return new Redesign(before, after, exact, flux, after.rating() / before.rating(), loading,
                warnings(before, after, exact, flux));
    }

    private static List<String> warnings(RatedWinding before, RatedWinding after, double exact, double flux) {
        List<String> warnings = new ArrayList<>();
        if (Math.abs(flux - 1) > FLUX_CHANGE) {
            warnings.add(String.format(Locale.ROOT, "whole turns change the flux density by %+.1f %%",
                    100 * (flux - 1)));
        }
        if (exact < ROUNDING_TURNS) {
            warnings.add(String.format(Locale.ROOT,
                    "%.2f turns per coil leave little choice: try other circuits or another span", exact));
        }
        if (after.hertz() > before.hertz() * 1.001) {
            warnings.add(String.format(Locale.ROOT,
                    "the core loses more at %.0f Hz than at %.0f Hz for the same flux density: lower the flux, or"
                    + " prove it by a core test", after.hertz(), before.hertz()));
        }
        if (after.hertz() != before.hertz()) {
            warnings.add(String.format(Locale.ROOT,
                    "the speed changes with the frequency to %.0f %% of what it was: check rotor, fan and bearings",
                    100 * after.hertz() / before.hertz()));
        }
        if (after.lineVolts() > before.lineVolts() * 1.2) {
            warnings.add("the insulation must suit the higher voltage");
        }
        UsualRange density = UsualRange.of(MachineType.SALIENT_POLE, DesignQuantity.STATOR_CURRENT_DENSITY_OPEN);
        if (density.place(after.currentDensity()) == UsualRange.Place.ABOVE) {
            warnings.add(String.format(Locale.ROOT,
                    "the current density of %.1f A/mm2 lies above the usual %.0f to %.0f",
                    after.currentDensity() * 1e-6, density.low() * 1e-6, density.high() * 1e-6));
        }
        return warnings;
    }

    /**
     * What leaves the usual flux densities once the new winding lies in its core.
     *
     * @param machine kind of machine
     * @param core core as measured
     * @param poles poles
     * @return one plain sentence each
     */
    public List<String> coreWarnings(MachineType machine, CoreGeometry core, int poles) {
        double webers = Emf.flux(Emf.EXACT, after.phaseVolts(), after.hertz(), after.seriesTurns(),
                after.windingFactor());
        CoreGeometry.FluxDensities densities = core.densities(webers, poles);
        List<String> found = new ArrayList<>();
        coreWarning(found, machine, DesignQuantity.GAP, densities.gap());
        coreWarning(found, machine, DesignQuantity.TOOTH, densities.tooth());
        coreWarning(found, machine, DesignQuantity.YOKE, densities.yoke());
        return found;
    }

    private static void coreWarning(List<String> found, MachineType machine, DesignQuantity quantity, double tesla) {
        UsualRange usual = UsualRange.of(machine, quantity);
        if (usual.place(tesla) != UsualRange.Place.INSIDE) {
            found.add(String.format(Locale.ROOT, "%s flux density %.2f T lies %s the usual %.2f to %.2f T",
                    quantity.name().toLowerCase(Locale.ROOT), tesla,
                    usual.place(tesla) == UsualRange.Place.ABOVE ? "above" : "below", usual.low(), usual.high()));
        }
    }
}

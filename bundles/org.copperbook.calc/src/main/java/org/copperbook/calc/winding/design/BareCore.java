package org.copperbook.calc.winding.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.Require;
import org.copperbook.calc.winding.Feasibility;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.calc.wire.WireSizes;

/**
 * First windings for a core whose winding data are lost: two-layer lap windings with every feasible span and number of
 * circuits, whole turns, and wire for the room in the slot. Turns follow from {@code E = sqrt(2) pi f N kw Phi} at the
 * wished gap density. Voltage drop is neglected, so the result is a start for the winder's judgement and not a design.
 *
 * @param proposals best first
 * @param lowestSeriesTurns turns in series per phase at the upper end of the usual gap density, full range of spans
 * @param highestSeriesTurns turns in series per phase at the lower end
 * @param spans spans that were considered
 * @param circuits circuits that are possible
 */
public record BareCore(List<FirstWinding> proposals, double lowestSeriesTurns, double highestSeriesTurns,
        List<Integer> spans,
        List<Integer> circuits) {
    private static final double FAVOURED_PITCH = 5.0 / 6;
    private static final double WEIGHT_OF_PITCH = 0.2;
    private static final double WEIGHT_OF_CIRCUITS = 0.002;

    public BareCore {
        proposals = List.copyOf(proposals);
        spans = List.copyOf(spans);
        circuits = List.copyOf(circuits);
    }

    /**
     * @param wish core, nameplate and targets
     * @return proposals and the range that remains open
     */
    public static BareCore design(BareCoreWish wish) {
        Feasibility feasibility = Feasibility.of(wish.core().slots(), wish.poles(), 3, 2);
        Require.that(feasibility.balanced(), "slots and poles", wish.core().slots() + " slots, " + wish.poles()
                + " poles",
                "balanced windings", feasibility.reason());
        double pitch = (double) wish.core().slots() / wish.poles();
        UsualRange usualPitch = UsualRange.of(wish.machine(), DesignQuantity.PITCH);
        List<FirstWinding> proposals = new ArrayList<>();
        List<Integer> spans = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        UsualRange gap = UsualRange.of(wish.machine(), DesignQuantity.GAP);
        for (int span = Math.max(1, (int) Math.ceil(usualPitch.low() * pitch - 1e-9)); span <= Math.max(1,
                Math.floor(pitch)); span++) {
            Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(wish.core().slots(), wish.poles(), 3,
                    span, 1));
            double factor = new WindingFactors(winding).factor(1, 1);
            spans.add(span);
            least = Math.min(least, seriesTurns(wish, factor, gap.high()));
            most = Math.max(most, seriesTurns(wish, factor, gap.low()));
            for (int circuits : feasibility.circuits()) {
                propose(wish, span, circuits, factor, proposals);
            }
        }
        proposals.sort(Comparator.comparingDouble(p -> rank(p, wish, pitch)));
        return new BareCore(proposals, least, most, spans, feasibility.circuits());
    }

    private static double rank(FirstWinding p, BareCoreWish wish, double pitch) {
        return Math.abs(p.densities().gap() / wish.targetGap() - 1)
                + WEIGHT_OF_PITCH * Math.abs(p.span() / pitch - FAVOURED_PITCH)
                + WEIGHT_OF_CIRCUITS * p.circuits();
    }

    private static double seriesTurns(BareCoreWish wish, double factor, double gap) {
        double flux = Emf.fluxPerPole(gap, wish.core().bore(), wish.core().length(), wish.poles());
        return wish.phaseVolts() / (Emf.EXACT * wish.hertz() * factor * flux);
    }

    private static void propose(BareCoreWish wish, int span, int circuits, double factor,
            List<FirstWinding> proposals) {
        double coilsPerPhase = wish.core().slots() / 3.0;
        double exact = seriesTurns(wish, factor, wish.targetGap()) * circuits / coilsPerPhase;
        int turns = (int) Math.max(1, Math.rint(exact));
        double series = turns * coilsPerPhase / circuits;
        double flux = Emf.flux(Emf.EXACT, wish.phaseVolts(), wish.hertz(), series, factor);
        double room = wish.core().slotArea() * wish.squareCellFill() / (2.0 * turns);
        Bundle bundle = thickestBundle(wish, room);
        if (bundle == null) {
            return;
        }
        double circuitCurrent = CurrentDensity.circuitCurrent(CurrentDensity.lineCurrent(wish.rating(),
                wish.lineVolts()),
                wish.junction(), circuits);
        double density = circuitCurrent / (bundle.strands * bundle.wire.area());
        double loading = CurrentDensity.linearLoading(circuitCurrent, 2.0 * turns * wish.core().slots(),
                wish.core().bore());
        double fill = bundle.square * 2 * turns / wish.core().slotArea();
        CoreGeometry.FluxDensities densities = wish.core().densities(flux, wish.poles());
        proposals.add(new FirstWinding(span, circuits, turns, factor, bundle.strands, bundle.wire, densities, density,
                loading,
                fill, remarks(wish, densities, density, loading)));
    }

    private record Bundle(int strands, WireSize wire, double square) {
    }

    /** The bundle with most copper in the room; of two within one percent the one with fewer strands. */
    private static Bundle thickestBundle(BareCoreWish wish, double room) {
        Bundle best = null;
        for (WireSize size : WireSizes.metric()) {
            if (size.bareDiameter() <= wish.thickestWire() * (1 + 1e-9)) {
                double overall = wish.grade() == InsulationGrade.BARE ? size.bareDiameter()
                        : size.overallDiameter(wish.grade()).maximum();
                int strands = (int) Math.min(wish.mostStrands(), Math.floor(room / (overall * overall) + 1e-9));
                if (strands >= 1 && better(strands, size, best)) {
                    best = new Bundle(strands, size, strands * overall * overall);
                }
            }
        }
        return best;
    }

    private static boolean better(int strands, WireSize size, Bundle best) {
        if (best == null) {
            return true;
        }
        double ratio = strands * size.area() / (best.strands * best.wire.area());
        return ratio > 1.01 || ratio > 0.99 && strands < best.strands;
    }

    private static List<String> remarks(BareCoreWish wish, CoreGeometry.FluxDensities densities, double density,
            double loading) {
        List<String> remarks = new ArrayList<>();
        remark(remarks, wish, DesignQuantity.GAP, densities.gap(), 1, "gap flux density", "T");
        remark(remarks, wish, DesignQuantity.TOOTH, densities.tooth(), 1, "tooth flux density", "T");
        remark(remarks, wish, DesignQuantity.YOKE, densities.yoke(), 1, "yoke flux density", "T");
        remark(remarks, wish, DesignQuantity.STATOR_CURRENT_DENSITY_OPEN, density, 1e-6, "current density", "A/mm2");
        remark(remarks, wish, DesignQuantity.LINEAR_LOADING, loading, 1e-3, "linear loading", "kA/m");
        return remarks;
    }

    private static void remark(List<String> remarks, BareCoreWish wish, DesignQuantity quantity, double value,
            double scale,
            String name, String unit) {
        UsualRange range = UsualRange.of(wish.machine(), quantity);
        if (range.place(value) != UsualRange.Place.INSIDE) {
            remarks.add(String.format(Locale.ROOT, "%s %.2f %s lies %s the usual %.2f to %.2f", name, value * scale,
                    unit,
                    range.place(value) == UsualRange.Place.ABOVE ? "above" : "below", range.low() * scale,
                    range.high() * scale));
        }
    }
}

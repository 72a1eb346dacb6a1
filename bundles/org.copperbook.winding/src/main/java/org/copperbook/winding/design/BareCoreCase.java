package org.copperbook.winding.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.design.BareCoreWish;
import org.copperbook.calc.winding.design.CoreGeometry;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.MachineType;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.WindingData;

/**
 * What is known of a bare core and its nameplate, and whether it suffices for a first winding. A figure that is missing
 * is named and never assumed; the few that are taken by common practice are said.
 *
 * @param wish    what the winding must meet; empty when figures are missing
 * @param missing message keys of the figures that are missing
 * @param assumed message keys of what was taken by common practice
 */
record BareCoreCase(Optional<BareCoreWish> wish, List<String> missing, List<String> assumed) {

    /** Iron in the stack without its vents (common practice, no source). */
    private static final double STACKING = 0.95;
    /** Share of a slot left by liner, separator and wedge (common practice, no source). */
    private static final double USABLE = 0.80;
    private static final int MOST_STRANDS = 24;

    BareCoreCase {
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
    }

    /**
     * What the designer chooses.
     *
     * @param slotAreaM2  usable slot area, m2; null to take it from the slot's depth and widths
     * @param gapT        peak gap flux density to aim at, T; null for the middle of the usual range
     * @param fill        squares round the wires over the slot area; null for the middle of the usual range
     * @param thickestMm  thickest wire, mm; null for 1.4
     */
    record Choice(Double slotAreaM2, Double gapT, Double fill, Double thickestMm) {
    }

    static BareCoreCase of(MachineKind kind, Optional<Nameplate> plate, Optional<WindingData> winding, Choice choice) {
        List<String> missing = new ArrayList<>();
        List<String> assumed = new ArrayList<>();
        MachineType machine = kind == MachineKind.BRUSHLESS_ALTERNATOR ? MachineType.SALIENT_POLE
                : MachineType.INDUCTION;
        WindingData w = winding.orElse(null);
        Nameplate p = plate.orElse(null);
        Integer slots = need(w == null ? null : w.slots(), "winding.slots", missing);
        Integer poles = need(w != null && w.poles() != null ? w.poles() : p == null ? null : p.poles(),
                "winding.poles", missing);
        Double bore = need(w == null ? null : w.boreM(), "core.bore", missing);
        Double length = need(w == null ? null : w.coreLengthM(), "core.length", missing);
        Double tooth = need(w == null ? null : w.toothWidthM(), "core.tooth", missing);
        Double yoke = need(yoke(w, assumed), "core.yoke", missing);
        Double area = need(slotArea(w, choice, assumed), "design.slotArea", missing);
        Double volts = need(p == null ? null : p.voltageV(), "design.volts", missing);
        Double hertz = need(p == null ? null : p.frequencyHz(), "design.hertz", missing);
        Double rating = need(rating(p, assumed), "design.rating", missing);
        PhaseJunction junction = need(junction(w, p), "winding.connection", missing);
        if (!missing.isEmpty()) {
            return new BareCoreCase(Optional.empty(), missing, assumed);
        }
        assumed.add("design.assumedStacking");
        double vents = w.ventCount() == null || w.ventWidthM() == null ? 0 : w.ventCount() * w.ventWidthM();
        CoreGeometry core = new CoreGeometry(slots, bore, length, (length - vents) * STACKING, tooth, yoke, area);
        double gap = choice.gapT() == null ? middle(machine, DesignQuantity.GAP) : choice.gapT();
        double fill = choice.fill() == null ? middle(machine, DesignQuantity.SQUARE_CELL_FILL) : choice.fill();
        double thickest = (choice.thickestMm() == null ? 1.4 : choice.thickestMm()) * 1e-3;
        return new BareCoreCase(Optional.of(new BareCoreWish(machine, core, poles, hertz, volts, junction, rating, gap,
                fill, InsulationGrade.GRADE_2, MOST_STRANDS, thickest)), List.of(), assumed);
    }

    private static double middle(MachineType machine, DesignQuantity quantity) {
        UsualRange range = UsualRange.of(machine, quantity);
        return (range.low() + range.high()) / 2;
    }

    private static <T> T need(T value, String key, List<String> missing) {
        boolean known = value != null && !(value instanceof Number n && !(n.doubleValue() > 0));
        if (!known) {
            missing.add(key);
            return null;
        }
        return value;
    }

    private static Double yoke(WindingData w, List<String> assumed) {
        if (w == null || w.yokeDepthM() != null) {
            return w == null ? null : w.yokeDepthM();
        }
        if (w.outsideM() == null || w.boreM() == null || w.slotDepthM() == null) {
            return null;
        }
        assumed.add("design.assumedYoke");
        return (w.outsideM() - w.boreM()) / 2 - w.slotDepthM();
    }

    private static Double slotArea(WindingData w, Choice choice, List<String> assumed) {
        if (choice.slotAreaM2() != null) {
            return choice.slotAreaM2();
        }
        if (w == null || w.slotDepthM() == null || w.slotWidthTopM() == null || w.slotWidthBottomM() == null) {
            return null;
        }
        assumed.add("design.assumedArea");
        return USABLE * w.slotDepthM() * (w.slotWidthTopM() + w.slotWidthBottomM()) / 2;
    }

    /** Apparent power, also by volts and amps of the plate; a motor's shaft power alone does not say it. */
    private static Double rating(Nameplate p, List<String> assumed) {
        if (p == null || p.apparentPowerVA() != null) {
            return p == null ? null : p.apparentPowerVA();
        }
        if (p.voltageV() == null || p.currentA() == null) {
            return null;
        }
        assumed.add("design.assumedRating");
        return Math.sqrt(3) * p.voltageV() * p.currentA();
    }

    private static PhaseJunction junction(WindingData w, Nameplate p) {
        WindingData.Connection c = w == null ? null : w.connection();
        if (c != null) {
            return switch (c) {
                case STAR, SERIES_STAR, PARALLEL_STAR -> PhaseJunction.STAR;
                case DELTA, SERIES_DELTA, PARALLEL_DELTA -> PhaseJunction.DELTA;
                case ZIG_ZAG, OPEN_PHASES, SINGLE_PHASE, SERIES_POLES, PARALLEL_POLES -> null;
            };
        }
        String words = p == null || p.connection() == null ? "" : p.connection().toLowerCase(java.util.Locale.ROOT);
        if (words.contains("zig")) {
            return null;
        }
        return words.contains("delta") ? PhaseJunction.DELTA
                : words.contains("star") || words.contains("wye") ? PhaseJunction.STAR : null;
    }
}

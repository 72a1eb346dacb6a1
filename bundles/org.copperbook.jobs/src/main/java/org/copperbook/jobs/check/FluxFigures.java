package org.copperbook.jobs.check;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;
import org.copperbook.calc.winding.design.CoreGeometry;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.Emf;
import org.copperbook.calc.winding.design.MachineType;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Flux densities in gap, tooth and yoke at rated volts, the drop in the winding neglected: {@code E = sqrt(2) pi f N kw
 * Phi} and the flux spread over the core (any textbook on a.c. machines; Pyrhonen, Jokinen and Hrabovcova, ch. 3). Only
 * for the winding whose volts stand on the plate.
 */
final class FluxFigures {

    /** Share of iron in a stack of laminations; common practice, no source. */
    private static final double STACKING = 0.95;

    private FluxFigures() {
    }

    static List<Verdict> of(WindingCase c) {
        if (c.role().isField()) {
            return List.of();
        }
        try {
            List<String> missing = missing(c);
            if (!missing.isEmpty()) {
                return List.of(c.missing("gap", missing), c.missing("tooth", missing), c.missing("yoke", missing));
            }
            return densities(c, c.coils().orElseThrow());
        } catch (OutOfRange e) {
            return List.of(c.refused("gap", e.getMessage()));
        }
    }

    private static List<String> missing(WindingCase c) {
        WindingData d = c.data();
        List<String> missing = WindingCase.lacking(c.machine().ratedVolts(c.role()), "figure.needs.volts",
                c.plate().map(Nameplate::frequencyHz), "figure.needs.frequency",
                c.coils(), "figure.needs.coils", c.junction(), "figure.needs.junction", d.circuits(),
                "capture.circuits", d.boreM(), "capture.bore", d.coreLengthM(), "capture.core-length");
        c.coils().ifPresent(w -> {
            if (w.coilsOf(1).isEmpty()) {
                missing.add(Phrases.say("figure.needs.phase", "U"));
            }
        });
        return missing;
    }

    private static List<Verdict> densities(WindingCase c, Winding w) {
        WindingData d = c.data();
        double line = c.machine().ratedVolts(c.role()).orElseThrow();
        double volts = c.junction().orElseThrow() == PhaseJunction.STAR ? line / Math.sqrt(3) : line;
        double turns = w.turnsOf(1) / d.circuits();
        double webers = Emf.flux(Emf.EXACT, volts, c.plate().orElseThrow().frequencyHz(), turns,
                new WindingFactors(w).factor(1, 1));
        double iron = ironLength(d);
        double gap = CoreGeometry.gap(webers, w.poles(), d.boreM(), d.coreLengthM());
        String how = Phrases.say("figure.how.flux", Figures.show(volts, "V"), Figures.number(turns, 4),
                Figures.number(webers * 1e3, 4), Phrases.say("figure.machine." + word(type(c))));
        return List.of(usual(c, "gap", DesignQuantity.GAP, gap, how), tooth(c, w, gap, iron, how),
                yoke(c, webers, iron, how));
    }

    private static Verdict tooth(WindingCase c, Winding w, double gap, double iron, String how) {
        WindingData d = c.data();
        if (d.toothWidthM() == null) {
            return c.missing("tooth", List.of(Phrases.say("figure.needs.tooth")));
        }
        double pitch = Math.PI * d.boreM() / w.slots();
        try {
            return usual(c, "tooth", DesignQuantity.TOOTH,
                    CoreGeometry.tooth(gap, pitch, d.toothWidthM(), d.coreLengthM(), iron), how);
        } catch (OutOfRange e) {
            return c.refused("tooth", e.getMessage());
        }
    }

    private static Verdict yoke(WindingCase c, double webers, double iron, String how) {
        if (c.data().yokeDepthM() == null) {
            return c.missing("yoke", List.of(Phrases.say("figure.needs.yoke")));
        }
        return usual(c, "yoke", DesignQuantity.YOKE, CoreGeometry.yoke(webers, c.data().yokeDepthM(), iron), how);
    }

    private static Verdict usual(WindingCase c, String what, DesignQuantity quantity, double tesla, String how) {
        UsualRange range = UsualRange.of(type(c).orElse(MachineType.SALIENT_POLE), quantity);
        return c.usual(what, tesla, "T", range.low(), range.high(), 1, "T", range.source(), how);
    }

    private static double ironLength(WindingData d) {
        double vents = d.ventCount() == null || d.ventWidthM() == null ? 0 : d.ventCount() * d.ventWidthM();
        return (d.coreLengthM() - vents) * STACKING;
    }

    /** Kind of machine by the winding and the rotor recorded; empty when an alternator's rotor is not recorded. */
    private static Optional<MachineType> type(WindingCase c) {
        if (c.role() == WindingRole.MOTOR_STATOR) {
            return Optional.of(MachineType.INDUCTION);
        }
        return c.job().windingAsFound(WindingRole.MAIN_ROTOR).map(WindingData::coilType)
                .map(t -> t == WindingData.CoilType.FIELD_POLE ? MachineType.SALIENT_POLE
                        : MachineType.CYLINDRICAL_ROTOR);
    }

    private static String word(Optional<MachineType> type) {
        return type.map(t -> t.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')).orElse("rotor-unknown");
    }
}

package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.excitation.RectifierRelations;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.design.CurrentDensity;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.MachineType;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.jobs.winding.WindingRole;

/** Current density at the rated current of the plate: current of one circuit over the area of its strands. */
final class CurrentFigures {

    private static final double PER_MM2 = 1e6;

    private CurrentFigures() {
    }

    static List<Verdict> of(WindingCase c) {
        try {
            return List.of(density(c));
        } catch (OutOfRange e) {
            return List.of(c.refused("density", e.getMessage()));
        }
    }

    private static Verdict density(WindingCase c) {
        WindingData d = c.data();
        Optional<ConductorBundle> wire = new WindingModel(d).conductor();
        Optional<Double> amps = amps(c);
        List<String> missing = new ArrayList<>(WindingCase.lacking(amps, "figure.needs." + needs(c.role()), wire,
                "capture.wire"));
        if (!c.role().isField()) {
            missing.addAll(WindingCase.lacking(c.junction(), "figure.needs.junction", d.circuits(), "capture.circuits"));
        }
        if (!missing.isEmpty()) {
            return c.missing("density", missing);
        }
        double area = wire.orElseThrow().area();
        int circuits = d.circuits() == null ? 1 : d.circuits();
        PhaseJunction junction = c.junction().orElse(PhaseJunction.STAR);
        double density = c.role().isField() ? amps.orElseThrow() / circuits / area
                : CurrentDensity.of(amps.orElseThrow(), junction, circuits, area);
        UsualRange range = range(c);
        String how = Phrases.say("figure.how.density", Figures.show(amps.orElseThrow(), "A"), circuits,
                Figures.number(area * PER_MM2, 4));
        if (!c.role().isField() && c.enclosed().isEmpty()) {
            how += " " + Phrases.say("figure.how.no-ip");
        }
        return c.usual("density", density, "A/mm\u00b2", range.low(), range.high(), PER_MM2, "A/mm\u00b2", range.source(),
                how);
    }

    private static UsualRange range(WindingCase c) {
        DesignQuantity quantity = c.role().isField() ? DesignQuantity.FIELD_CURRENT_DENSITY
                : c.enclosed().orElse(false) ? DesignQuantity.STATOR_CURRENT_DENSITY_CLOSED
                        : DesignQuantity.STATOR_CURRENT_DENSITY_OPEN;
        return UsualRange.of(MachineType.SALIENT_POLE, quantity);
    }

    private static String needs(WindingRole role) {
        return switch (role) {
            case MAIN_ROTOR, EXCITER_ROTOR -> "main-field-amps";
            case EXCITER_STATOR -> "excitation-amps";
            case PILOT_STATOR, MOTOR_ROTOR -> "own-amps";
            case MAIN_STATOR, MOTOR_STATOR -> "amps";
        };
    }

    /** Rated current at the terminals of the winding, A: of the line, of the field, or of the exciter armature's line. */
    private static Optional<Double> amps(WindingCase c) {
        Optional<Nameplate> plate = c.plate();
        return switch (c.role()) {
            case MAIN_ROTOR -> plate.map(Nameplate::mainFieldA);
            case EXCITER_STATOR -> plate.map(Nameplate::excitationA);
            case EXCITER_ROTOR -> plate.map(Nameplate::mainFieldA).map(dc -> relations(c).lineRmsAmperes(dc));
            case PILOT_STATOR, MOTOR_ROTOR -> Optional.empty();
            case MAIN_STATOR, MOTOR_STATOR -> plate.map(Nameplate::currentA).or(() -> c.machine().ratedLineVolts().flatMap(v -> plate
                    .map(Nameplate::apparentPowerVA).map(s -> CurrentDensity.lineCurrent(s, v))));
        };
    }

    /** Circuit of the rotating rectifier; six diodes where it is not recorded. */
    private static RectifierRelations relations(WindingCase c) {
        boolean half = c.job().rectifier().map(RectifierSet::circuit)
                .filter(circuit -> circuit == RectifierSet.Circuit.HALF_WAVE).isPresent();
        return half ? RectifierRelations.HALF_WAVE : RectifierRelations.BRIDGE;
    }
}

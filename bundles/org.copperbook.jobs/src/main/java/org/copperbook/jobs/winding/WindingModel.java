package org.copperbook.jobs.winding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.wire.Conductor;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.Strip;
import org.copperbook.calc.wire.WireSize;

/** What the calculations need of a captured winding: its coil list, its conductor, and what follows from both. */
public final class WindingModel {

    private static final Pattern STRIP =
            Pattern.compile("([0-9]+(?:[.,][0-9]+)?) *[xX\u00d7] *([0-9]+(?:[.,][0-9]+)?) *(?:mm)?");

    private final WindingData data;

    public WindingModel(WindingData data) {
        this.data = data;
    }

    /**
     * The coil list, when the winding is a distributed one and every coil has its slots and turns.
     *
     * @throws OutOfRange when what was captured cannot be a winding (a slot the core does not have, an odd pole count)
     */
    public Optional<Winding> coils() {
        if (data.slots() == null || data.poles() == null || data.phases() == null || data.phases() < 1
                || data.groups().isEmpty()) {
            return Optional.empty();
        }
        List<Coil> coils = new ArrayList<>();
        for (CoilGroup group : data.groups()) {
            int phase = phase(group.phase());
            for (CapturedCoil c : group.coils()) {
                if (phase < 1 || c.goSlot() == null || c.returnSlot() == null || c.turns() == null) {
                    return Optional.empty();
                }
                boolean reversed = Boolean.TRUE.equals(group.reversed()) ^ Boolean.TRUE.equals(c.reversed());
                coils.add(new Coil(phase, group.number(), c.goSlot(), c.returnSlot(), c.turns(), reversed ? -1 : 1));
            }
        }
        return coils.isEmpty() ? Optional.empty()
                : Optional.of(new Winding(data.slots(), data.poles(), data.phases(),
                        data.layers() == null ? 2 : data.layers(), coils));
    }

    /**
     * The wires in hand as one conductor, when any are stated.
     *
     * @throws OutOfRange when a size is not understood
     */
    public Optional<ConductorBundle> conductor() {
        return conductor(data.wire());
    }

    /**
     * The wires in hand of one group: its own where they differ, else those of the winding.
     *
     * @throws OutOfRange when a size is not understood
     */
    public Optional<ConductorBundle> conductor(CoilGroup group) {
        return conductor(group.wire().isEmpty() ? data.wire() : group.wire());
    }

    /**
     * Resistance of a group that its turns, mean turn and wire imply, ohm.
     *
     * @param celsius temperature, degrees Celsius
     * @throws OutOfRange when a size is not understood or the temperature is outside what copper allows
     */
    public Optional<Double> predictedOhms(CoilGroup group, double celsius) {
        Optional<ConductorBundle> bundle = conductor(group);
        int turns = turns(group);
        if (bundle.isEmpty() || data.meanTurnM() == null || turns == 0) {
            return Optional.empty();
        }
        ConductorBundle b = bundle.get();
        return Optional.of(turns * data.meanTurnM() * b.ohmsPerMetre() * b.material().factorFrom20(celsius));
    }

    /**
     * Mass of bare copper the whole winding implies, kg.
     *
     * @throws OutOfRange when a size is not understood
     */
    public Optional<Double> copperKg() {
        double kg = 0;
        for (CoilGroup group : data.groups()) {
            Optional<ConductorBundle> bundle = conductor(group);
            if (bundle.isEmpty() || data.meanTurnM() == null || turns(group) == 0) {
                return Optional.empty();
            }
            kg += turns(group) * data.meanTurnM() * bundle.get().kilogramsPerMetre();
        }
        return kg == 0 ? Optional.empty() : Optional.of(kg);
    }

    /**
     * Mass of bare copper by size of wire as recorded, kg, in the order the sizes stand.
     *
     * @return nothing while turns, mean turn or a wire are missing
     * @throws OutOfRange when a size is not understood
     */
    public Optional<Map<String, Double>> copperKgBySize() {
        if (copperKg().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> bySize = new LinkedHashMap<>();
        for (CoilGroup group : data.groups()) {
            for (WireInHand w : group.wire().isEmpty() ? data.wire() : group.wire()) {
                double metres = turns(group) * data.meanTurnM();
                bySize.merge(w.size().strip(), metres * conductor(List.of(w)).orElseThrow().kilogramsPerMetre(), Double::sum);
            }
        }
        return Optional.of(bySize);
    }

    /** Turns of a group in series; 0 while any is missing. */
    public static int turns(CoilGroup group) {
        int turns = 0;
        for (CapturedCoil c : group.coils()) {
            if (c.turns() == null) {
                return 0;
            }
            turns += c.turns();
        }
        return turns;
    }

    /** Number of a phase from its mark: U or A or 1 is 1. Returns 0 when the mark is none of these. */
    public static int phase(String mark) {
        if (mark == null || mark.isEmpty()) {
            return 0;
        }
        return switch (Character.toUpperCase(mark.charAt(0))) {
            case 'U', 'A', '1' -> 1;
            case 'V', 'B', '2' -> 2;
            case 'W', 'C', '3' -> 3;
            default -> 0;
        };
    }

    private static Optional<ConductorBundle> conductor(List<WireInHand> wires) {
        if (wires.isEmpty() || wires.stream().anyMatch(w -> w.size() == null)) {
            return Optional.empty();
        }
        List<ConductorBundle.Strands> strands = new ArrayList<>();
        for (WireInHand w : wires) {
            strands.add(new ConductorBundle.Strands(w.strands(), size(w.size())));
        }
        return Optional.of(new ConductorBundle(strands, ConductorMaterial.COPPER));
    }

    private static Conductor size(String text) {
        Matcher strip = STRIP.matcher(text.strip());
        if (strip.matches()) {
            double a = Double.parseDouble(strip.group(1).replace(',', '.')) / 1000;
            double b = Double.parseDouble(strip.group(2).replace(',', '.')) / 1000;
            return new Strip(Math.max(a, b), Math.min(a, b), 0);
        }
        return WireSize.parse(text);
    }
}

package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.MachineType;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.jobs.winding.WindingData;

/**
 * Slot fill of the fullest slot: squares round the insulated wires over the slot as measured, a trapezium of depth and two
 * widths (geometry). Liner and wedge are not taken off, so only the upper end of the usual range says something.
 */
final class FillFigures {

    private FillFigures() {
    }

    static List<Verdict> of(WindingCase c) {
        if (c.role().isField()) {
            return List.of();
        }
        try {
            return List.of(fill(c));
        } catch (OutOfRange e) {
            return List.of(c.refused("fill", e.getMessage()));
        }
    }

    private static Verdict fill(WindingCase c) {
        WindingData d = c.data();
        Optional<Double> area = InsulatedWire.slotArea(d);
        List<String> missing = new ArrayList<>(WindingCase.lacking(area, "figure.needs.slot", c.coils(),
                "figure.needs.coils"));
        if (d.wire().isEmpty()) {
            missing.add(Phrases.say("capture.wire"));
        } else if (!InsulatedWire.allRound(d.wire())) {
            return c.missing("fill", List.of(Phrases.say("figure.needs.round")));
        } else if (InsulatedWire.squareSum(d.wire()).isEmpty()) {
            missing.add(Phrases.say("figure.needs.grade"));
        }
        if (!missing.isEmpty()) {
            return c.missing("fill", missing);
        }
        Optional<Double> squares = fullest(d);
        if (squares.isEmpty()) {
            return c.missing("fill", List.of(Phrases.say("figure.needs.grade")));
        }
        double fill = squares.get() / area.orElseThrow();
        UsualRange range = UsualRange.of(MachineType.SALIENT_POLE, DesignQuantity.SQUARE_CELL_FILL);
        boolean tight = fill > range.high();
        return c.figure("fill").value(fill, null, "1").bounds(Bounds.atMost(range.high()))
                .limitText(Phrases.say("figure.usually-at-most", Figures.show(range.high(), "1")))
                .source(range.source()).outcome(tight ? Outcome.DOUBTFUL : Outcome.MEETS)
                .reason(Phrases.say(tight ? "figure.fill-tight" : "figure.fill", Figures.show(fill, "1"),
                        Figures.number(area.get() * 1e6, 4)))
                .settle(tight ? Phrases.say("settle.figure.fill") : "").done();
    }

    /** Squares round all wires of the fullest slot, m2. */
    private static Optional<Double> fullest(WindingData d) {
        Map<Integer, Double> bySlot = new HashMap<>();
        for (CoilGroup g : d.groups()) {
            Optional<Double> bundle = InsulatedWire.squareSum(g.wire().isEmpty() ? d.wire() : g.wire());
            if (bundle.isEmpty()) {
                return Optional.empty();
            }
            for (CapturedCoil coil : g.coils()) {
                double side = coil.turns() * bundle.get();
                bySlot.merge(coil.goSlot(), side, Double::sum);
                bySlot.merge(coil.returnSlot(), side, Double::sum);
            }
        }
        return bySlot.values().stream().max(Double::compare);
    }
}

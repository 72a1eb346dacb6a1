package org.copperbook.jobs.winding;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.WireSize;

/** Room that the wires in hand take with their insulation, and the slot that they lie in. */
public final class InsulatedWire {

    private InsulatedWire() {
    }

    /** Whether every size reads as a round one. */
    public static boolean allRound(List<WireInHand> wires) {
        return wires.stream().allMatch(w -> round(w.size()).isPresent());
    }

    /** The round size behind a text, or nothing when it is a strip or not understood. */
    public static Optional<WireSize> round(String size) {
        try {
            return size == null ? Optional.empty() : Optional.of(WireSize.parse(size));
        } catch (OutOfRange e) {
            return Optional.empty();
        }
    }

    /** Whether two texts name one size, by what it measures; false when one of them is null. */
    public static boolean isSame(String a, String b) {
        if (a == null || b == null) {
            return false;
        }
        return round(a).isPresent() ? round(a).equals(round(b)) : a.strip().equalsIgnoreCase(b.strip());
    }

    /** Enamel by the number of the grade as recorded; empty when there is none or no such grade. */
    public static Optional<InsulationGrade> grade(Integer number) {
        if (number == null || number < 1 || number > 2) {
            return Optional.empty();
        }
        return Optional.of(number == 1 ? InsulationGrade.GRADE_1 : InsulationGrade.GRADE_2);
    }

    /**
     * Sum over the strands of the squared overall diameter, which square-cell fill grows with: of the diameter measured
     * over the covering where there is one, else of the largest diameter of the grade (IEC 60317-0-1).
     *
     * @param wires round wires
     * @return m2; empty when a wire has neither, or is not round
     * @throws OutOfRange when a size is outside what is tabulated
     */
    public static Optional<Double> squareSum(List<WireInHand> wires) {
        double sum = 0;
        for (WireInHand w : wires) {
            Optional<Double> overall = overall(w);
            if (overall.isEmpty()) {
                return Optional.empty();
            }
            sum += w.strands() * overall.get() * overall.get();
        }
        return wires.isEmpty() ? Optional.empty() : Optional.of(sum);
    }

    private static Optional<Double> overall(WireInHand w) {
        Optional<WireSize> size = round(w.size());
        if (size.isEmpty()) {
            return Optional.empty();
        }
        if (w.coveredMm() != null) {
            return Optional.of(w.coveredMm() / 1000);
        }
        return grade(w.grade()).map(g -> size.get().overallDiameter(g).maximum());
    }

    /**
     * Area of a slot as measured: a trapezium of its depth and its two widths (geometry), liner and wedge not taken off.
     *
     * @return m2; empty while a dimension is missing
     */
    public static Optional<Double> slotArea(WindingData d) {
        if (d.slotDepthM() == null || d.slotWidthTopM() == null || d.slotWidthBottomM() == null) {
            return Optional.empty();
        }
        double area = d.slotDepthM() * (d.slotWidthTopM() + d.slotWidthBottomM()) / 2;
        return area > 0 ? Optional.of(area) : Optional.empty();
    }
}

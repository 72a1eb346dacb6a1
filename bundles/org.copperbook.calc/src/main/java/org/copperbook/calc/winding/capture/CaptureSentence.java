package org.copperbook.calc.winding.capture;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says the outcome of a capture check in plain words. */
final class CaptureSentence {
    private static final int MOST_NAMED = 3;
    /** Phase marks of IEC 60034-8. */
    private static final String MARKS = "UVW";

    private CaptureSentence() {
    }

    static String of(double clean, boolean questioned, List<Explanation> explanations,
            List<CaptureReport.Comparison> comparisons) {
        CaptureReport.Comparison worst = comparisons.stream()
                .max(Comparator.comparingDouble(c -> Math.abs(c.deviation()) / c.expanded())).orElseThrow();
        if (!questioned || explanations.isEmpty()) {
            return String.format(Locale.ROOT,
                    "The readings agree with the capture: the largest difference, %s, is %.1f %% where %.1f %% would"
                    + " be covered.", name(worst.reading()), 100 * worst.deviation(), 100 * worst.expanded());
        }
        Explanation first = explanations.get(0);
        String causes = first.slips().stream().limit(MOST_NAMED).map(Slip::inWords)
                .collect(Collectors.joining(", or "));
        String more = first.slips().size() > MOST_NAMED ? " (and " + (first.slips().size() - MOST_NAMED) + " like it)"
                : "";
        String parting = first.partingTests().isEmpty() ? "" : " To tell them apart: "
                + String.join("; ", first.partingTests()) + ".";
        return String.format(Locale.ROOT,
                "The readings do not fit the capture (%s is off by %.1f %%): they read as if %s%s, with a"
                        + " probability of %.0f %%.%s",
                name(worst.reading()), 100 * worst.deviation(), causes, more, 100 * first.probability(), parting);
    }

    private static String name(CaptureReading reading) {
        if (reading instanceof CaptureReading.OfGroup group) {
            return "group " + group.group();
        }
        if (reading instanceof CaptureReading.OfPhase phase) {
            return "phase " + (phase.phase() <= MARKS.length() ? MARKS.substring(phase.phase() - 1, phase.phase())
                    : String.valueOf(phase.phase()));
        }
        return reading instanceof CaptureReading.OfMass ? "the copper mass" : "the slot fill";
    }
}

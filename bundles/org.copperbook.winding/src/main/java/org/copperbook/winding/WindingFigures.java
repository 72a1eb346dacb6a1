package org.copperbook.winding;

import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.PhaseSymmetry;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;

/** What follows from a captured winding, in words for the page: winding factor, balance of the phases, copper mass. */
final class WindingFigures {

    private final Words words;

    WindingFigures(Words words) {
        this.words = words;
    }

    /** Fundamental winding factor of each phase by vector sum over the coils captured. */
    String factor(WindingData data) {
        return said(() -> new WindingModel(data).coils().map(w -> {
            WindingFactors factors = new WindingFactors(w);
            StringBuilder text = new StringBuilder();
            for (int phase = 1; phase <= w.phases(); phase++) {
                text.append(text.length() == 0 ? "" : "   ").append("UVW".charAt((phase - 1) % 3)).append(' ')
                        .append(String.format(Locale.getDefault(), "%.4f", factors.factor(phase, 1)));
            }
            return text.toString();
        }));
    }

    /** Whether the phases are alike and 120 degrees apart, and whether every slot is filled. */
    String balance(WindingData data) {
        return said(() -> new WindingModel(data).coils().map(w -> {
            if (!w.findings().isEmpty()) {
                return String.join("; ", w.findings().subList(0, Math.min(3, w.findings().size())));
            }
            return w.phases() < 2 ? "" : symmetry(w);
        }));
    }

    private String symmetry(Winding w) {
        PhaseSymmetry s = PhaseSymmetry.of(w);
        return words.text(s.balanced() ? "figures.balanced" : "figures.unbalanced",
                s.largestMagnitudeDeviation() * 100);
    }

    /** Mass of bare copper implied, kg. */
    String copper(WindingData data) {
        return said(() -> new WindingModel(data).copperKg()
                .map(kg -> String.format(Locale.getDefault(), "%.2f kg", kg)));
    }

    private static String said(java.util.function.Supplier<Optional<String>> figure) {
        try {
            return figure.get().orElse("");
        } catch (OutOfRange e) {
            return e.getMessage();
        }
    }
}

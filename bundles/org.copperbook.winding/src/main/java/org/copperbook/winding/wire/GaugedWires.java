package org.copperbook.winding.wire;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.TwoGaugings;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.calc.wire.WireSizes;
import org.copperbook.calc.wire.WireSystem;
import org.copperbook.desk.text.Words;

/** What the two measurements of a wire in hand say of its size and grade. */
final class GaugedWires {

    /** Expanded uncertainty of a micrometer on a wire, m (common practice, no source). */
    private static final double MICROMETER_M = 4e-6;
    private static final int NAMED = 3;
    private static final List<WireSize> SIZES = Stream.of(WireSystem.values())
            .flatMap(s -> WireSizes.of(s).stream()).toList();

    private final Words words;

    GaugedWires(Words words) {
        this.words = words;
    }

    /** What a row's diameters allow; empty when none is measured or one is no wire's. */
    Optional<TwoGaugings> of(JsonNode row) {
        try {
            Double bare = metres(row.path("bareMm"));
            Double covered = metres(row.path("coveredMm"));
            return bare == null && covered == null ? Optional.empty()
                    : Optional.of(TwoGaugings.of(bare, covered, MICROMETER_M, SIZES));
        } catch (OutOfRange e) {
            return Optional.empty();
        }
    }

    /** The same in a few words for a cell. */
    String inWords(JsonNode row) {
        Optional<TwoGaugings> gauged = of(row);
        if (gauged.isEmpty()) {
            return "";
        }
        List<TwoGaugings.Match> all = gauged.get().matches();
        if (all.isEmpty()) {
            return words.text("gauged.nothing");
        }
        String first = all.stream().limit(NAMED).map(this::name)
                .collect(Collectors.joining(" " + words.text("gauged.or") + " "));
        return all.size() > NAMED ? words.text("gauged.more", first, all.size() - NAMED) : first;
    }

    /** Size and grade in words. */
    String name(TwoGaugings.Match m) {
        return m.grade() == InsulationGrade.BARE ? words.text("gauged.sizeOnly", m.size().label())
                : words.text("gauged.sizeAndGrade", m.size().label(), m.grade() == InsulationGrade.GRADE_1 ? 1 : 2);
    }

    private static Double metres(JsonNode mm) {
        return mm.isNumber() ? Double.valueOf(mm.doubleValue() * 1e-3) : null;
    }
}

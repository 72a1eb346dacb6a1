package org.copperbook.calc.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Size and grade from two measurements. Largest overall diameters of IEC 60317-0-1 (as listed in an open wire data set):
 * 1.00 mm 1.062 / 1.094, 1.25 mm 1.316 / 1.349, 1.60 mm 1.670 / 1.706 in grade 1 / grade 2; 0.80 mm 0.855 / 0.884.
 */
class TwoGaugingsTest {

    private static final double MICROMETER = 4e-6;
    private static final List<WireSize> ALL = Stream.of(WireSystem.values())
            .flatMap(s -> WireSizes.of(s).stream()).toList();

    private static TwoGaugings metric(Double bareMm, Double coveredMm) {
        return TwoGaugings.of(bareMm == null ? null : bareMm * 1e-3, coveredMm == null ? null : coveredMm * 1e-3,
                MICROMETER, WireSizes.metric());
    }

    @ParameterizedTest
    @CsvSource({"1.00, 1.094, GRADE_2", "1.25, 1.349, GRADE_2", "1.60, 1.706, GRADE_2", "0.80, 0.884, GRADE_2"})
    void theLargestHeavyBuildIsOneSizeAndOneGrade(double size, double covered, InsulationGrade grade) {
        TwoGaugings g = metric(size, covered);
        assertEquals(1, g.matches().size(), g.toString());
        assertEquals(size * 1e-3, g.matches().get(0).size().bareDiameter(), 1e-9);
        assertEquals(grade, g.matches().get(0).grade());
        assertFalse(g.ambiguous());
        assertFalse(g.matches().get(0).range().source().isBlank(), "says where the figures come from");
    }

    @Test
    void aReadingThatBothGradesAllowIsAmbiguous() {
        TwoGaugings g = metric(1.25, 1.316);
        assertEquals(List.of(InsulationGrade.GRADE_1, InsulationGrade.GRADE_2),
                g.matches().stream().map(TwoGaugings.Match::grade).sorted().toList());
        assertTrue(g.ambiguous());
    }

    @Test
    void theBareMeasurementAloneSaysNothingOfTheGrade() {
        assertEquals(InsulationGrade.BARE, metric(1.25, null).matches().get(0).grade());
    }

    @Test
    void nearbyGaugesOfTwoSystemsAreBothShown() {
        // AWG 20 is 0.8118 mm (ASTM B258), SWG 21 is 0.8128 mm (0.032 in, BS 3737)
        List<String> systems = TwoGaugings.of(0.8123e-3, null, MICROMETER, ALL).matches().stream()
                .map(m -> m.size().label()).toList();
        assertTrue(systems.containsAll(List.of("AWG 20", "SWG 21")), systems.toString());
    }

    @Test
    void measurementsThatNoSizeAllowsTogetherMatchNothing() {
        assertEquals(List.of(), metric(1.00, 1.349).matches());
        assertThrows(OutOfRange.class, () -> metric(null, null));
        assertThrows(OutOfRange.class, () -> metric(9.0, null));
    }
}

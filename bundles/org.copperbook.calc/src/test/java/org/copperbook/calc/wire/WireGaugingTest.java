package org.copperbook.calc.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WireGaugingTest {

    /** Tables of BS 3737 and ASTM B258: a bare reading meets the nearest size. */
    @ParameterizedTest
    @CsvSource({"1.219,SWG,SWG 18", "1.024,AWG,AWG 18", "1.25,METRIC,1.25 mm", "0.914,SWG,SWG 20"})
    void bareReadingMeetsItsSize(double millimetres, WireSystem system, String label) {
        WireGauging gauging = WireGauging.of(millimetres * 1e-3, InsulationGrade.BARE, 4e-6, WireSizes.of(system));
        assertEquals(label, gauging.nearest().label());
        assertEquals(label, gauging.fitting().get(0).label());
    }

    /** IEC 60317 in the open dataset OpenMagnetics MAS: 1.25 mm grade 2 measures at most 1.349 mm. */
    @Test
    void coveredReadingLooksThroughTheEnamel() {
        WireGauging gauging = WireGauging.of(1.340e-3, InsulationGrade.GRADE_2, 2e-6, WireSizes.metric());
        assertEquals("1.25 mm", gauging.nearest().label());
        assertFalse(gauging.ambiguous());
    }

    /** SWG 36 (0.1930 mm) and AWG 32 (0.2019 mm) are told apart; SWG 21 (0.8128 mm) and AWG 20 (0.8118 mm) are not. */
    @Test
    void twoSizesThatFitAreBothShown() {
        List<WireSize> both = new ArrayList<>(WireSizes.swg());
        both.addAll(WireSizes.awg());
        WireGauging gauging = WireGauging.of(0.8123e-3, InsulationGrade.BARE, 2e-6, both);
        assertTrue(gauging.ambiguous());
        assertEquals(List.of("AWG 20", "SWG 21"), gauging.fitting().stream().map(WireSize::label).sorted().toList());
        assertFalse(WireGauging.of(0.1930e-3, InsulationGrade.BARE, 1e-6, both).ambiguous());
    }

    @Test
    void readingBetweenSizesFitsNone() {
        WireGauging gauging = WireGauging.of(1.34e-3, InsulationGrade.BARE, 1e-6, WireSizes.swg());
        assertTrue(gauging.fitting().isEmpty());
        assertEquals("SWG 17", gauging.nearest().label());
        assertThrows(OutOfRange.class, () -> WireGauging.of(9e-3, InsulationGrade.BARE, 1e-6, WireSizes.swg()));
    }

    @Test
    void neighboursFollowTheirOwnSystem() {
        assertEquals("AWG 15", WireSizes.neighbour(WireSize.awg(16), 1).label());
        assertEquals("SWG 19", WireSizes.neighbour(WireSize.swg(18), -1).label());
        assertEquals("1.32 mm", WireSizes.neighbour(WireSize.metric(1.25), 1).label());
    }

    /**
     * Geometry with overall diameters 0.959 and 0.989 mm of 0.90 mm wire (IEC 60317-0-1, memory): 90 wires in 168 mm2.
     */
    @Test
    void slotFillNamesItsDefinition() {
        SlotFill fill = SlotFill.of(List.of(new SlotFill.Wires(90, WireSize.metric(0.9), InsulationGrade.GRADE_2)),
                168e-6);
        assertEquals(0.340806703, fill.copper(), 1e-9);
        assertEquals(0.411543448, fill.insulatedRound(), 1e-9);
        assertEquals(0.523993393, fill.squareCell(), 1e-9);
    }
}

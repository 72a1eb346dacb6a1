package org.copperbook.calc.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nominal cross-sections of IEC 60228, table 1 (from memory). */
class CableSizeTest {

    @ParameterizedTest
    @CsvSource({"2.73, 4", "4, 4", "4.01, 6", "63, 70", "0.1, 0.5", "999, 1000"})
    void theNextNominalSizeIsTaken(double area, double nominal) {
        assertEquals(Optional.of(nominal), CableSize.noLessThan(area));
    }

    @Test
    void noCableIsMadeForMoreAndNoneForNothing() {
        assertEquals(Optional.empty(), CableSize.noLessThan(1001));
        assertThrows(OutOfRange.class, () -> CableSize.noLessThan(0));
    }
}

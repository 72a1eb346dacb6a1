package org.copperbook.jobs.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobCodeTest {

    @Test
    void theNumberComesBackFromItsCode() {
        assertEquals(Optional.of("2026-0042"), JobCode.number(JobCode.of("2026-0042")));
        assertEquals(Optional.of("W/7 b"), JobCode.number(JobCode.of(" W/7 b ") + "\r\n"));
    }

    @Test
    void otherTextsAreNoCodes() {
        assertEquals(Optional.empty(), JobCode.number("2026-0042"));
        assertEquals(Optional.empty(), JobCode.number("CPBJOB"));
        assertEquals(Optional.empty(), JobCode.number("  "));
        assertEquals(Optional.empty(), JobCode.number(null));
    }

    @Test
    void aJobWithoutANumberHasNoCode() {
        assertThrows(IllegalArgumentException.class, () -> JobCode.of(" "));
    }
}

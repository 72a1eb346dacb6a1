package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeadConnectionTest {

    /**
     * US Army TM 9-6115-645-24: the sections of a 12-lead machine give 120/208 and 240/416 V; the others are circuit
     * identities.
     */
    @ParameterizedTest
    @CsvSource({"series-star-12,416,240", "parallel-star-12,208,120", "zig-zag-12,360,207.846", "series-delta-12,240,",
            "parallel-delta-12,120,", "star-6,208,120", "delta-6,120,", "single-phase-series-delta-12,240,120",
            "single-phase-double-delta-12,240,120", "single-phase-zig-zag-12,415.692,207.846",
            "single-phase-star-6,208,",
            "single-phase-delta-6,120,", "single-phase-series-4,240,120", "single-phase-parallel-4,120,"})
    void voltagesFollowFromTheJoins(String id, double lineVolts, Double neutralVolts) {
        LeadConnection connection = LeadConnection.named(id);
        assertEquals(lineVolts, connection.lineVolts(120, 1, 2), 0.4);
        if (connection.phases() == 3) {
            assertEquals(lineVolts, connection.lineVolts(120, 2, 3), 0.4);
            assertEquals(lineVolts, connection.lineVolts(120, 3, 1), 0.4);
        }
        if (neutralVolts == null) {
            assertThrows(OutOfRange.class, () -> connection.neutralVolts(120, 1));
        } else {
            for (int line = 1; line <= connection.lines().size(); line++) {
                assertEquals(neutralVolts, connection.neutralVolts(120, line), 0.4);
            }
        }
    }

    /** US Army TM 5-6115-593-34 p. 143: six sections of 0.00237 ohm; ratios are circuit identities. */
    @ParameterizedTest
    @CsvSource({"parallel-star-12,0.00237", "series-star-12,0.00948", "parallel-delta-12,0.00079",
            "series-delta-12,0.00316",
            "zig-zag-12,0.00948"})
    void resistancesFollowFromTheJoins(String id, double ohms) {
        LeadConnection connection = LeadConnection.named(id);
        assertEquals(ohms, connection.lineOhms(0.00237, 1, 2), 1e-9);
        assertEquals(ohms, connection.lineOhms(0.00237, 2, 3), 1e-9);
    }

    /**
     * NEMA MG 1 part 2 (memory): nine leads give two voltages, one to two; low-voltage delta joins 1-6-7, 2-4-8 and
     * 3-5-9.
     */
    @ParameterizedTest
    @CsvSource({"series-star-9,416,4", "parallel-star-9,208,1", "series-delta-9,240,1.3333",
            "parallel-delta-9,120,0.3333"})
    void nineLeadsGiveTwoVoltages(String id, double volts, double ohms) {
        LeadConnection connection = LeadConnection.named(id);
        for (int line = 1; line <= 3; line++) {
            assertEquals(volts, connection.lineVolts(120, line, line % 3 + 1), 0.4);
            assertEquals(ohms, connection.lineOhms(1, line, line % 3 + 1), 1e-3);
        }
        assertEquals(List.of(), connection.idle());
        assertThrows(OutOfRange.class, () -> connection.iecMark(10));
    }

    @Test
    void noConnectionDrivesACurrentAroundItself() {
        for (LeadConnection connection : LeadConnection.all()) {
            assertTrue(connection.circulating() < 1e-12, connection.id());
        }
    }

    @Test
    void aWrongJoinWouldDriveOne() {
        LeadConnection wrong = new LeadConnection("wrong", 6, 3, List.of(List.of(1, 4), List.of(2, 6), List.of(3, 5)),
                List.of(),
                List.of(List.of(1), List.of(2), List.of(3)), List.of());
        assertTrue(wrong.circulating() > 0.9);
    }

    /** IEC 60034-8 marks beside NEMA MG 1 T-numbers (memory): T1 is U1, T4 is U2, T7 is U5, T10 is U6, T12 is W6. */
    @ParameterizedTest
    @CsvSource({"1,U1", "4,U2", "7,U5", "10,U6", "2,V1", "12,W6", "9,W5"})
    void bothMarksAreKnown(int lead, String mark) {
        assertEquals(mark, LeadConnection.named("series-star-12").iecMark(lead));
    }

    @Test
    void leadsLeftOverAreNamed() {
        assertEquals(List.of(3, 6, 9, 12), LeadConnection.named("single-phase-zig-zag-12").idle());
        assertEquals(List.of(), LeadConnection.named("series-star-12").idle());
        assertThrows(OutOfRange.class, () -> LeadConnection.named("something else"));
    }
}

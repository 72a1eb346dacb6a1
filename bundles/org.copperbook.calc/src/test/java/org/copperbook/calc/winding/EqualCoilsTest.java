package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.copperbook.calc.wire.Strip;
import org.copperbook.calc.wire.WireSize;
import org.junit.jupiter.api.Test;

class EqualCoilsTest {

    /**
     * Robertson Ex. 1.17 p. 22: 250 m of 0.5 mm, resistivity 1.8e-8, 22.92 ohm; here with the ratio of the
     * resistivities.
     */
    @Test
    void lengthOfWireMatchesRobertson() {
        EqualCoils coil = new EqualCoils(1, 250, 1, ConductorBundle.copper(1, WireSize.metric(0.5)), 1);
        assertEquals(22.92, coil.phaseResistance(20) * 1.8e-8 / 1.7241e-8, 0.005);
    }

    /**
     * US Army TM 5-6115-545-34 table 9-1: 7 coils of 4 turns, 6 x AWG 15, 0.026 ohm at 25 C over two groups in
     * parallel.
     */
    @Test
    void meanTurnOfTheArmyStatorIsAboutOneMetre() {
        ConductorBundle bundle = ConductorBundle.copper(6, WireSize.awg(15));
        double meanTurn = EqualCoils.meanTurnFromResistance(0.026, 25, 14, 4, bundle, 2);
        assertEquals(1.04599664, meanTurn, 0.005);
        assertEquals(0.026, new EqualCoils(14, 4, meanTurn, bundle, 2).phaseResistance(25), 1e-12);
    }

    /** A generator maker's public rewind-data sheet: 90 coils of 3 turns, mean turn 1.2954 m, strip, prints 89.3 kg. */
    @Test
    void massMatchesTheRewindSheet() {
        EqualCoils stator = new EqualCoils(30, 3, 1.2954, ConductorBundle.copper(1, new Strip(6.8326e-3, 4.1402e-3, 0)),
                3);
        assertEquals(89.3, stator.mass(3), 0.03 * 89.3);
    }

    /** Geometry with the density 8890 kg/m3 of IEC 60028: 120 coils x 8 turns x 4 x 1.12 mm, mean turn 0.612 m. */
    @Test
    void massFollowsFromDimensions() {
        EqualCoils winding = new EqualCoils(40, 8, 0.612, ConductorBundle.copper(4, WireSize.metric(1.12)), 1);
        assertEquals(20.5830787, winding.mass(3), 1e-6);
    }
}

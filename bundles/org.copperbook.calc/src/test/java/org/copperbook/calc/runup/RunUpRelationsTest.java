package org.copperbook.calc.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.apache.commons.math3.complex.Complex;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.Unbalance;
import org.copperbook.calc.runup.VibrationLimits.Grade;
import org.copperbook.calc.runup.VibrationLimits.Mounting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Relations of the run-up that the tables of values do not show. */
class RunUpRelationsTest {

    /** Negative over positive sequence from magnitudes, against Fortescue's transform of random closed triangles. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83})
    void negativeSequenceAgreesWithSymmetricalComponents(long seed) {
        Random random = new Random(seed);
        Complex a = new Complex(-0.5, Math.sqrt(3) / 2);
        for (int i = 0; i < 500; i++) {
            Complex uv = new Complex(400 + 40 * random.nextGaussian(), 40 * random.nextGaussian());
            Complex vw = uv.multiply(a.multiply(a)).add(new Complex(20 * random.nextGaussian(),
                    20 * random.nextGaussian()));
            Complex wu = uv.add(vw).negate();
            double positive = uv.add(a.multiply(vw)).add(a.multiply(a).multiply(wu)).abs();
            double negative = uv.add(a.multiply(a).multiply(vw)).add(a.multiply(wu)).abs();
            assertEquals(negative / positive, Unbalance.negativeSequence(uv.abs(), vw.abs(), wu.abs()), 1e-7);
        }
    }

    @Test
    void linesThatCloseNoTriangleAreRefused() {
        assertThrows(OutOfRange.class, () -> Unbalance.negativeSequence(100, 100, 250));
    }

    @Test
    void equalValuesHaveNoUnbalance() {
        assertEquals(0, Unbalance.ofMean(400, 400, 400));
        assertEquals(0, Unbalance.negativeSequence(400, 400, 400), 1e-7);
    }

    /** Slip is a share of the synchronous speed; taken on the rotor speed 3 % would read 3.09 %. */
    @Test
    void slipIsTakenOnTheSynchronousSpeed() {
        assertEquals(0.03, SynchronousSpeed.slip(1500, 1455), 1e-12);
        assertEquals(4, SynchronousSpeed.poles(50, 1455 / 60.0));
        assertThrows(OutOfRange.class, () -> SynchronousSpeed.perSecond(50, 3));
    }

    /** IEC 60034-14:2003, table 1: the edge of 132 mm belongs to the lower column; grade B rigid sets nothing there. */
    @Test
    void vibrationColumnsAndTheEmptyCell() {
        assertEquals(1.6e-3, VibrationLimits.of(Grade.A, Mounting.FREE, 0.132).orElseThrow().velocity(), 1e-12);
        assertEquals(2.2e-3, VibrationLimits.of(Grade.A, Mounting.FREE, 0.1321).orElseThrow().velocity(), 1e-12);
        assertTrue(VibrationLimits.of(Grade.B, Mounting.RIGID, 0.1).isEmpty());
        assertThrows(OutOfRange.class, () -> VibrationLimits.of(Grade.A, Mounting.FREE, 0.05));
    }

    /** ISO 10816-1, annex B, class II: 1.12, 2.8, 7.1 mm/s. */
    @Test
    void zoneEdgesBelongToTheBetterZone() {
        VibrationZone.MachineClass c = VibrationZone.MachineClass.II;
        assertEquals(VibrationZone.A, VibrationZone.of(c, 1.12e-3));
        assertEquals(VibrationZone.B, VibrationZone.of(c, 2.8e-3));
        assertEquals(VibrationZone.C, VibrationZone.of(c, 7.1e-3));
        assertEquals(VibrationZone.D, VibrationZone.of(c, 7.2e-3));
    }

    /** AR100: G2.5 up to 2500 r/min, G1 above; the displacement and velocity limits meet near 1200 r/min within 5 %. */
    @Test
    void shopGradesAndLimits() {
        assertEquals(2.5, Balance.shopGrade(2500 / 60.0));
        assertEquals(1, Balance.shopGrade(2501 / 60.0));
        double below = ShopVibration.velocityRms(20, false);
        double above = ShopVibration.velocityRms(20.001, false);
        assertEquals(1, below / above, 0.05);
        assertEquals(0.8, ShopVibration.velocityRms(25, true) / ShopVibration.velocityRms(25, false), 1e-12);
    }

    @Test
    void bothPowersOfSpeedMeetAtNominal() {
        VoltageAtSpeed v = VoltageAtSpeed.of(400, 1500, 1500);
        assertEquals(v.linear(), v.square());
        VoltageAtSpeed low = VoltageAtSpeed.of(380, 1450, 1500);
        assertTrue(low.square() > low.linear());
    }

    @Test
    void linearAndSquareRuleDiffer() {
        assertEquals(96, LoadTemperature.LINEAR.rise(120, 50, 40), 1e-12);
        assertEquals(76.8, LoadTemperature.SQUARE.rise(120, 50, 40), 1e-12);
        assertEquals(40, LoadTemperature.SQUARE.load(120, 50, 76.8), 1e-9);
    }
}

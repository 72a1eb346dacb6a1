package org.copperbook.calc.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of the temperature correction that need no source. */
class TemperatureLawsTest {

    @ParameterizedTest
    @EnumSource(Conductor.class)
    void correctionInverts(Conductor c) {
        Random random = new Random(31);
        for (int i = 0; i < 1000; i++) {
            double a = celsius(random);
            double b = celsius(random);
            assertEquals(1, TemperatureCorrection.factor(c, a, b) * TemperatureCorrection.factor(c, b, a), 1e-14);
        }
    }

    @ParameterizedTest
    @EnumSource(Conductor.class)
    void correctedValueDoesNotDependOnThePath(Conductor c) {
        Random random = new Random(32);
        for (int i = 0; i < 1000; i++) {
            double a = celsius(random);
            double b = celsius(random);
            double d = celsius(random);
            double direct = TemperatureCorrection.factor(c, a, b);
            double round = TemperatureCorrection.factor(c, a, d) * TemperatureCorrection.factor(c, d, b);
            assertEquals(direct, round, 1e-14 * direct);
        }
    }

    @Test
    void deviationDoesNotDependOnTheReferenceTemperature() {
        AsLeftComparison.Reading found = new AsLeftComparison.Reading(new Uncertain(0.0462, 1e-5),
                new Uncertain(14, 1));
        AsLeftComparison.Reading left = new AsLeftComparison.Reading(new Uncertain(0.04925, 1e-5),
                new Uncertain(31, 1));
        AsLeftComparison at20 = AsLeftComparison.of(found, left, 20, Conductor.COPPER_IEC);
        AsLeftComparison at75 = AsLeftComparison.of(found, left, 75, Conductor.COPPER_IEC);
        assertEquals(at20.deviation().value(), at75.deviation().value(), 1e-14);
        assertEquals(at20.deviation().u(), at75.deviation().u(), 1e-14);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42})
    void temperatureByResistanceInvertsTheCorrection(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double cold = 15 + 10 * random.nextDouble();
            double hot = cold + 120 * random.nextDouble();
            double ohms = 0.01 + random.nextDouble();
            double hotOhms = ohms * TemperatureCorrection.factor(Conductor.ALUMINIUM, cold, hot);
            assertEquals(hot, TemperatureByResistance.celsius(ohms, cold, hotOhms, 225), 1e-10);
        }
    }

    /** 1/(234.5 + 20) is the coefficient 0.00393 of copper at 20 degrees (IEC 60028 and IEEE 118 agree). */
    @Test
    void coefficientAndInferredZeroAreOneLaw() {
        TemperatureCoefficient a = new TemperatureCoefficient(1 / 254.5, 20);
        assertEquals(234.5, a.inferredZero(), 1e-12);
        assertEquals(TemperatureCorrection.factor(Conductor.COPPER_IEEE, 5, 130), a.factor(5, 130), 1e-14);
        assertEquals(a.factor(5, 130), a.at(77).factor(5, 130), 1e-14);
    }

    /** The slip of a coefficient beside the wrong base is pointed out, the right pair is not. */
    @Test
    void misplacedCoefficientIsPointedOut() {
        assertTrue(new TemperatureCoefficient(0.00393, 25).looksMisplaced());
        assertTrue(new TemperatureCoefficient(0.0043, 20).looksMisplaced());
        assertFalse(TemperatureCoefficient.COPPER_20.looksMisplaced());
        assertFalse(TemperatureCoefficient.ALUMINIUM_20.looksMisplaced());
        assertFalse(new TemperatureCoefficient(0.00385, 25).looksMisplaced());
        assertFalse(new TemperatureCoefficient(0.00426, 0).looksMisplaced());
    }

    @Test
    void temperatureOutsideTheStraightLineIsRefusedWithItsReason() {
        OutOfRange refusal = assertThrows(OutOfRange.class,
                () -> TemperatureCorrection.factor(Conductor.COPPER_IEC, 750, 20));
        assertTrue(refusal.getMessage().contains("winding temperature 750 °C"));
        assertTrue(refusal.getMessage().contains("-60 to 300 °C"));
    }

    /** 18 K off on the thermometer is the classic slip between a hot and a cold reading: 6.6 % in copper near 20 degrees. */
    @Test
    void thermometerUncertaintyIsRelativeToTheInferredZero() {
        Uncertain x = TemperatureCorrection.correct(new Uncertain(1, 0), new Uncertain(25, 2), 25,
                Conductor.COPPER_IEC);
        assertEquals(2.0 / 260, x.u(), 1e-12);
    }

    private static double celsius(Random random) {
        return -40 + 240 * random.nextDouble();
    }
}

package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.complex.ComplexUtils;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindingFactorsTest {

    private static WindingFactors factors(int slots, int poles, int span) {
        return new WindingFactors(WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, 3, span, 7)));
    }

    /**
     * J. Cros and P. Viarouge, IEEE Trans. Energy Conversion 17(2) 2002, concentrated windings (memory, three digits).
     */
    @ParameterizedTest
    @CsvSource({"3,2,0.866", "6,4,0.866", "9,6,0.866", "9,8,0.945", "9,10,0.945", "12,8,0.866", "12,10,0.933",
            "12,14,0.933",
            "12,16,0.866", "15,14,0.951", "15,16,0.951", "18,14,0.902", "18,16,0.945", "18,20,0.945", "21,20,0.953",
            "21,22,0.953",
            "24,20,0.933", "24,22,0.949", "24,26,0.949"})
    void concentratedCoilsMatchTheLiterature(int slots, int poles, double printed) {
        for (int phase = 1; phase <= 3; phase++) {
            assertEquals(printed, factors(slots, poles, 1).factor(phase, 1), 6e-4);
        }
    }

    /** Distribution factors printed in Kosow Ex. 2.6, Theraja Ex. 37.2 and Bakshi Ex. 4.2, full pitch. */
    @ParameterizedTest
    @CsvSource({"2,0.966", "3,0.960", "4,0.958", "5,0.957", "7,0.956"})
    void fullPitchWindingsMatchTheTextbookTable(int q, double printed) {
        assertEquals(printed, factors(12 * q, 4, 3 * q).factor(1, 1), 5e-4);
        assertEquals(printed, RegularFactors.distribution(12 * q, 4, 3), 5e-4);
    }

    /** Nagrath and Kothari, Electric Machines, Ex. 5.1: 36 slots, 4 poles, orders 1, 3 and 5. */
    @ParameterizedTest
    @CsvSource({"1,0.9598", "3,0.6667", "5,0.2176"})
    void harmonicsMatchNagrathAndKothari(int order, double printed) {
        assertEquals(printed, factors(36, 4, 9).factor(1, order), 5e-5);
    }

    /**
     * US Army TM 5-6115-545-34 table 9-1: 84 slots, 4 poles, span 1-15; product of the textbook factors for q = 7 and
     * 2/3 pitch.
     */
    @Test
    void twoThirdsPitchSuppressesTheThirdHarmonic() {
        assertEquals(0.866025404 * 0.955820714, factors(84, 4, 14).factor(1, 1), 1e-8);
        assertEquals(0, factors(84, 4, 14).factor(1, 3), 1e-12);
    }

    /** Oracle: a plain sum of complex numbers with Commons Math over a winding made at random. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithAPlainComplexSumOnRandomWindings(long seed) {
        Winding winding = random(new Random(seed));
        WindingFactors factors = new WindingFactors(winding);
        double[][] table = factors.table(17);
        for (int phase = 1; phase <= winding.phases(); phase++) {
            for (int order = 1; order <= 17; order++) {
                Complex sum = Complex.ZERO;
                double turns = 0;
                for (Coil coil : winding.coilsOf(phase)) {
                    double slotAngle = 2 * Math.PI * winding.polePairs() * order / winding.slots();
                    Complex go = ComplexUtils.polar2Complex(1, 0)
                            .multiply(new Complex(0, slotAngle * coil.goSlot()).exp());
                    Complex back = new Complex(0, slotAngle * coil.returnSlot()).exp();
                    sum = sum.add(go.subtract(back).multiply(coil.sense() * coil.turns() / 2));
                    turns += coil.turns();
                }
                assertEquals(sum.abs() / turns, factors.factor(phase, order), 1e-10);
                assertEquals(sum.abs() / turns, table[phase - 1][order - 1], 1e-10);
            }
        }
    }

    /** Oracle: the Fourier transform of the conductor distribution over the slots (Commons Math, 64 slots). */
    @Test
    void agreesWithTheFourierTransformOfTheConductors() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(64, 4, 2, 13, 3));
        double[] conductors = new double[64];
        for (Coil coil : winding.coilsOf(1)) {
            conductors[coil.goSlot() - 1] += coil.sense() * coil.turns();
            conductors[coil.returnSlot() - 1] -= coil.sense() * coil.turns();
        }
        Complex[] spectrum = new FastFourierTransformer(DftNormalization.STANDARD)
                .transform(conductors, TransformType.FORWARD);
        WindingFactors factors = new WindingFactors(winding);
        for (int pairs = 1; pairs < 32; pairs++) {
            assertEquals(spectrum[pairs].abs() / (2 * winding.turnsOf(1)), factors.towardsField(1, pairs).magnitude(),
                    1e-12);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void factorsStayBelowOneAndDoNotDependOnSlotNumbers(long seed) {
        Random random = new Random(seed);
        Winding winding = random(random);
        Winding renumbered = winding.renumbered(1 + random.nextInt(winding.slots()));
        for (int phase = 1; phase <= winding.phases(); phase++) {
            for (int order = 1; order <= 25; order++) {
                double factor = new WindingFactors(winding).factor(phase, order);
                assertTrue(factor <= 1 + 1e-12);
                assertEquals(factor, new WindingFactors(renumbered).factor(phase, order), 1e-9);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"36,4,7", "48,4,10", "54,8,6", "30,4,7", "27,4,6", "60,8,7", "90,6,10", "84,4,14", "12,10,1", "15,14,1",
            "108,12,8"})
    void generatedWindingsAreBalanced(int slots, int poles, int span) {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, 3, span, 7));
        PhaseSymmetry symmetry = PhaseSymmetry.of(winding);
        assertTrue(symmetry.balanced(), symmetry.toString());
        double product = RegularFactors.distribution(slots, poles, 3)
                * Math.abs(RegularFactors.pitch(span, (double) slots / poles, 1));
        assertEquals(product, new WindingFactors(winding).factor(1, 1), 1e-12);
    }

    @Test
    void oneTurnTooFewShowsInTheBalance() {
        Winding sound = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 7, 7));
        List<Coil> coils = new ArrayList<>(sound.coils());
        coils.set(5, coils.get(5).withTurns(6));
        PhaseSymmetry symmetry = PhaseSymmetry.of(new Winding(36, 4, 3, 2, coils));
        assertFalse(symmetry.balanced());
        assertTrue(symmetry.largestMagnitudeDeviation() > 0.005);
    }

    /** Theraja, Electrical Technology, Ex. 37.4 (nine, six and three slots of 20 degrees) and Ex. 37.1 (pitch). */
    @Test
    void closedFormsMatchTheraja() {
        double slot = Math.toRadians(20);
        assertEquals(0.63986, RegularFactors.distribution(9, slot, 1), 1e-5);
        assertEquals(0.83121, RegularFactors.distribution(6, slot, 1), 1e-5);
        assertEquals(0.9598, RegularFactors.distribution(3, slot, 1), 5e-5);
        assertEquals(0.9397, RegularFactors.pitch(7, 9, 1), 5e-5);
        assertEquals(0.9239, RegularFactors.pitch(9, 12, 1), 5e-5);
        assertEquals(0.8819, RegularFactors.pitch(11, 16, 1), 5e-5);
        assertEquals(3 / Math.PI, RegularFactors.distributionOfSpread(Math.PI / 3), 1e-12);
    }

    static Winding random(Random random) {
        int phases = 1 + random.nextInt(3);
        int slots = 12 + random.nextInt(90);
        int poles = 2 * (1 + random.nextInt(6));
        List<Coil> coils = new ArrayList<>();
        for (int phase = 1; phase <= phases; phase++) {
            for (int i = 0; i < 3 + random.nextInt(10); i++) {
                int go = 1 + random.nextInt(slots);
                int back = (go - 1 + 1 + random.nextInt(slots - 1)) % slots + 1;
                coils.add(new Coil(phase, phase, go, back, 1 + random.nextInt(20), random.nextBoolean() ? 1 : -1));
            }
        }
        return new Winding(slots, poles, phases, 2, coils);
    }
}

package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MmfHarmonicsTest {

    /**
     * Distribution factors 0.9598, 0.2176, 0.1774 for q = 3 (Say; Nagrath and Kothari Ex. 5.1): 5th against, 7th with
     * the field.
     */
    @Test
    void fifthRunsBackAndSeventhRunsOn() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 9, 5));
        List<MmfHarmonics.Wave> waves = MmfHarmonics.of(winding, 14);
        assertEquals(1, waves.get(1).forward(), 1e-12);
        assertEquals(0, waves.get(1).backward(), 1e-12);
        assertEquals(0.2176 / 0.9598 / 5, waves.get(9).backward(), 2e-5);
        assertEquals(0, waves.get(9).forward(), 1e-12);
        assertEquals(0.1774 / 0.9598 / 7, waves.get(13).forward(), 2e-5);
        assertEquals(0, waves.get(5).forward() + waves.get(5).backward(), 1e-12);
    }

    /** Oracle: Fourier transform of the slot currents written as phasors (Commons Math). */
    @ParameterizedTest
    @CsvSource({"64,4,2,13", "16,2,2,5", "32,8,2,3"})
    void agreesWithTheTransformOfTheSlotCurrents(int slots, int poles, int phases, int span) {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, phases, span, 3));
        Complex[] currents = new Complex[slots];
        java.util.Arrays.fill(currents, Complex.ZERO);
        for (Coil coil : winding.coils()) {
            Complex current = new Complex(0, -(coil.phase() - 1) * Math.PI / 2).exp()
                    .multiply(coil.sense() * coil.turns());
            currents[coil.goSlot() - 1] = currents[coil.goSlot() - 1].add(current);
            currents[coil.returnSlot() - 1] = currents[coil.returnSlot() - 1].subtract(current);
        }
        Complex[] spectrum = new FastFourierTransformer(DftNormalization.STANDARD)
                .transform(currents, TransformType.FORWARD);
        int p = poles / 2;
        double working = Math.max(spectrum[p].abs(), spectrum[slots - p].abs()) / p;
        for (MmfHarmonics.Wave wave : MmfHarmonics.of(winding, slots / 2 - 1)) {
            int n = wave.polePairs();
            double one = spectrum[n].abs() / n / working;
            double other = spectrum[slots - n].abs() / n / working;
            assertEquals(Math.max(one, other), Math.max(wave.forward(), wave.backward()), 1e-12);
            assertEquals(Math.min(one, other), Math.min(wave.forward(), wave.backward()), 1e-12);
        }
    }

    @Test
    void singlePhaseWavesRunBothWaysAlike() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(24, 4, 1, 6, 5));
        MmfHarmonics.Wave working = MmfHarmonics.of(winding, 2).get(1);
        assertEquals(working.forward(), working.backward(), 1e-12);
    }
}

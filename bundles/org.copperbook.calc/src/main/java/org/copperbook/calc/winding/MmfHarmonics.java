package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * The travelling waves of magnetomotive force that balanced phase currents make in a winding. Each phase gives a
 * standing wave of every number of pole pairs n with an amplitude in proportion to its vector sum over n; two waves
 * running either way add up over the phases (Pyrhonen, Jokinen and Hrabovcova, Design of Rotating Electrical Machines,
 * ch. 2). Slot openings count as points.
 */
public final class MmfHarmonics {
    private MmfHarmonics() {
    }

    /**
     * One harmonic of the magnetomotive force.
     *
     * @param polePairs pole pairs of the wave
     * @param forward amplitude of the wave running with the working wave, over the working wave
     * @param backward amplitude of the wave running against it, over the working wave
     */
    public record Wave(int polePairs, double forward, double backward) {
    }

    /**
     * @param winding winding of one, two, three or more phases
     * @param highestPolePairs highest number of pole pairs, from the machine's own number
     * @return waves of 1 up to that number of pole pairs
     */
    public static List<Wave> of(Winding winding, int highestPolePairs) {
        Require.between("highest number of pole pairs", highestPolePairs, winding.polePairs(), 100_000,
                "the working wave must be among them");
        WindingFactors factors = new WindingFactors(winding);
        double[] along = wave(winding, factors, winding.polePairs());
        boolean swapped = along[1] > along[0];
        double working = Math.max(along[0], along[1]);
        List<Wave> waves = new ArrayList<>();
        for (int n = 1; n <= highestPolePairs; n++) {
            double[] amplitude = wave(winding, factors, n);
            waves.add(new Wave(n, amplitude[swapped ? 1 : 0] / working, amplitude[swapped ? 0 : 1] / working));
        }
        return waves;
    }

    private static double[] wave(Winding winding, WindingFactors factors, int polePairs) {
        double[][] sum = new double[2][2];
        for (int phase = 1; phase <= winding.phases(); phase++) {
            Phasor phasor = factors.towardsField(phase, polePairs).times(winding.turnsOf(phase) / polePairs);
            double lag = lagOf(phase, winding.phases());
            for (int direction = 0; direction < 2; direction++) {
                double turn = direction == 0 ? lag : -lag;
                sum[direction][0] += phasor.re() * Math.cos(turn) + phasor.im() * Math.sin(turn);
                sum[direction][1] += phasor.re() * Math.sin(turn) - phasor.im() * Math.cos(turn);
            }
        }
        return new double[] {Math.hypot(sum[0][0], sum[0][1]), Math.hypot(sum[1][0], sum[1][1])};
    }

    /** Electrical lag of a phase's current; an even number of phases shares out half a circle, as its belts do. */
    private static double lagOf(int phase, int phases) {
        return (phase - 1) * (phases % 2 == 0 ? Math.PI : 2 * Math.PI) / phases;
    }
}

package org.copperbook.calc.winding.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.wire.WireSize;

/**
 * A winding on the bench of the simulation: every coil a length of real copper with its own small errors. It is built
 * from metres, strands and temperature without the library's predictions, and its errors are deliberately of another
 * kind than the check assumes: uniform and heavy-tailed instead of normal, with a drift around the bore, two reels of
 * wire, a temperature gradient and varnish left on the copper.
 */
final class BenchWinding {
    private static final double RESISTIVITY = 1.7241e-8;
    private static final double DENSITY = 8890;
    static final double MEAN_TURN_LIMIT = 0.03;
    static final double AREA_LIMIT = 0.02;
    static final double KELVIN_LIMIT = 2.5;
    static final double GAIN_LIMIT = 0.0035;

    private final CapturedWinding captured;
    private final Random random;
    /** Differences from what was captured. */
    int coilOfSlip = -1;
    int turnsChange;
    int everyCoil;
    boolean shorted;
    int strands;
    WireSize size;
    int circuits;
    double kelvin;

    BenchWinding(CapturedWinding captured, Random random) {
        this.captured = captured;
        this.random = random;
        strands = captured.bundle().count();
        size = (WireSize) captured.bundle().strands().get(0).conductor();
        circuits = captured.plan().of(1).size();
    }

    private double uniform(double limit) {
        return limit * (2 * random.nextDouble() - 1);
    }

    /** Student's t with three degrees of freedom, scaled. */
    private double heavyTailed(double scale) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double g = random.nextGaussian();
            sum += g * g;
        }
        return scale * random.nextGaussian() / Math.sqrt(sum / 3);
    }

    /** Reads every group, every phase and the scale. */
    List<CaptureReading> read() {
        List<Coil> coils = captured.winding().coils();
        int n = coils.size();
        double lengthError = uniform(MEAN_TURN_LIMIT);
        double drift = uniform(0.005);
        double areaError = uniform(AREA_LIMIT);
        double secondReel = uniform(0.003);
        int reelEnds = random.nextInt(n);
        double warmth = captured.celsius() + kelvin + uniform(KELVIN_LIMIT);
        double gradient = uniform(0.7);
        double nominal = Math.PI / 4 * size.bareDiameter() * size.bareDiameter() * strands;
        double[] ohms = new double[1 + coils.stream().mapToInt(Coil::group).max().orElseThrow()];
        double kilograms = 0;
        for (int i = 0; i < n; i++) {
            double place = 2.0 * i / n - 1;
            double metres = captured.meanTurn() * (1 + lengthError) * (1 + drift * place) * (1 + uniform(0.015));
            double area = nominal * (1 + areaError + (i > reelEnds ? secondReel : 0));
            double turns = coils.get(i).turns() + everyCoil + (i == coilOfSlip ? turnsChange : 0);
            double conducting = turns - (i == coilOfSlip && shorted ? 1 : 0);
            double celsius = warmth + gradient * place;
            ohms[coils.get(i).group()] += RESISTIVITY * metres * conducting / area * (235 + celsius) / 255;
            kilograms += DENSITY * metres * turns * area;
        }
        double gain = 1 + uniform(GAIN_LIMIT);
        List<CaptureReading> readings = new ArrayList<>();
        for (int group : captured.winding().groups()) {
            readings.add(new CaptureReading.OfGroup(group, meter(ohms[group] * gain), 0.002));
        }
        CircuitPlan actual = circuits == captured.plan().of(1).size() ? captured.plan()
                : CircuitPlan.equal(captured.winding(), circuits);
        for (int phase = 1; phase <= captured.winding().phases(); phase++) {
            double siemens = 0;
            for (List<Integer> circuit : actual.of(phase)) {
                siemens += 1 / circuit.stream().mapToDouble(g -> ohms[g]).sum();
            }
            readings.add(new CaptureReading.OfPhase(phase, meter(gain / siemens), 0.002));
        }
        double varnish = 0.0075 + uniform(0.0125);
        readings.add(new CaptureReading.OfMass(kilograms * (1 + varnish) * (1 + heavyTailed(0.002)), 0.012));
        return readings;
    }

    /** A bridge with two thousand counts to the range and a heavy-tailed disturbance. */
    private double meter(double ohms) {
        double disturbed = ohms * (1 + heavyTailed(0.0012));
        double step = Math.pow(10, Math.ceil(Math.log10(disturbed / 2))) * 2 / 20_000;
        return Math.max(step, Math.round(disturbed / step) * step);
    }
}

package org.copperbook.calc.winding.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.RegularFactors;
import org.copperbook.calc.wire.WireSize;
import org.junit.jupiter.api.Test;

class EmfTest {

    /**
     * McPherson, ch. 3 Ex. 1-3: 6 poles, 0.25 m, radius 0.15 m, 0.96 T, 24 turns a phase, 50 Hz: 0.024 Wb and 119.38 V.
     */
    @Test
    void fluxAndVoltsMatchMcPherson() {
        double flux = Emf.fluxPerPole(0.96, 0.30, 0.25, 6);
        assertEquals(0.024, flux, 1e-9);
        double factor = RegularFactors.pitch(5, 6, 1) * RegularFactors.distribution(36, 6, 3);
        assertEquals(119.38, Emf.phase(Emf.EXACT, 50, 24, factor, flux), 0.1);
    }

    /**
     * Guru and Hiziroglu Ex. 7.5: 144 slots, 16 poles, span 7 of 9, 240 turns in series, 25 mWb: 1201.3473 V with 4.44.
     */
    @Test
    void voltsMatchGuru() {
        double factor = RegularFactors.pitch(7, 9, 1) * RegularFactors.distribution(144, 16, 3);
        assertEquals(1201.3473, Emf.phase(Emf.BOOK, 50, 240, factor, 0.025), 1e-3);
        assertEquals(0.025, Emf.flux(Emf.BOOK, 1201.3473, 50, 240, factor), 1e-7);
    }

    /**
     * Fitzgerald, Kingsley and Umans Ex. 4.5: 2 poles, gap 45 mm, 68 turns, kf 0.945, 720 A; 18 turns, ka 0.933, 60 Hz:
     * 25.7 kV line.
     */
    @Test
    void turbineGeneratorMatchesFitzgerald() {
        double tesla = Emf.gapFieldOf(0.045, 68, 0.945, 2, 720);
        double flux = Emf.fluxPerPole(tesla, 1.06, 3.8, 2);
        assertEquals(25.7e3, Math.sqrt(3) * Emf.phase(Emf.EXACT, 60, 18, 0.933, flux), 100);
    }

    /**
     * Bakshi Ex. 4.12: 10 poles, 600 r/min, 3 slots a pole and phase, fields 1.0, 0.3, 0.2 T: 1711.94 V phase, 2916.65
     * V line.
     */
    @Test
    void harmonicsMatchBakshi() {
        double slot = Math.toRadians(20);
        double[] factor = new double[6];
        for (int order = 1; order <= 5; order += 2) {
            factor[order] = RegularFactors.distribution(3, slot, order) * RegularFactors.pitch(8, 9, order);
        }
        double flux = 2 / Math.PI * 1.0 * 0.35 * 0.30;
        double fundamental = Emf.phase(Emf.BOOK, 50, 90.0 * 8 / 2 / 3, factor[1], flux);
        List<Emf.FieldHarmonic> fields = List.of(new Emf.FieldHarmonic(3, 0.3, factor[3]),
                new Emf.FieldHarmonic(5, 0.2, factor[5]));
        List<Double> volts = Emf.harmonics(fundamental, factor[1], fields);
        double phase = Math.sqrt(fundamental * fundamental + volts.get(0) * volts.get(0) + volts.get(1) * volts.get(1));
        assertEquals(1711.94, phase, 0.05);
        assertEquals(2916.65, Emf.starLine(fundamental, fields, volts), 0.05);
    }

    /**
     * Definition: 250 kVA at 400 V star, two circuits of 24 x 1.25 mm give 6.126 A/mm2; army set of TM 5-6115-545-34:
     * 8.41 A/mm2.
     */
    @Test
    void currentDensityIsPerCircuit() {
        double area = 24 * WireSize.metric(1.25).area();
        double density = CurrentDensity.of(CurrentDensity.lineCurrent(250e3, 400), PhaseJunction.STAR, 2, area);
        assertEquals(6.12587662e6, density, 10);
        double army = CurrentDensity.of(CurrentDensity.lineCurrent(60e3, 208), PhaseJunction.STAR, 2,
                6 * WireSize.awg(15).area());
        assertEquals(8.41008314e6, army, 10);
        assertEquals(UsualRange.Place.ABOVE,
                UsualRange.of(MachineType.SALIENT_POLE, DesignQuantity.STATOR_CURRENT_DENSITY_OPEN).place(army));
    }

    /** Continuity of flux, a geometric identity: the tooth carries one slot pitch, the yoke half a pole. */
    @Test
    void teethAndYokeCarryTheGapFlux() {
        CoreGeometry core = new CoreGeometry(36, 0.30, 0.25, 0.225, 0.012, 0.04, 150e-6);
        CoreGeometry.FluxDensities densities = core.densities(0.024, 6);
        assertEquals(0.96, densities.gap(), 1e-9);
        assertEquals(densities.gap() * core.slotPitch() * 0.25, densities.tooth() * 0.012 * 0.225, 1e-12);
        assertEquals(0.012, densities.yoke() * 0.04 * 0.225, 1e-12);
        assertThrows(OutOfRange.class, () -> new CoreGeometry(36, 0.30, 0.25, 0.26, 0.012, 0.04, 150e-6));
    }

    @Test
    void copperIsDrawnWithItsAllowanceAndPricedToTheCent() {
        CopperNeed need = CopperNeed.of(20.5830787, 0.08, new BigDecimal("14.35"));
        assertEquals(22.229725, need.orderKilograms(), 1e-6);
        assertEquals(new BigDecimal("319.00"), need.cost());
    }
}

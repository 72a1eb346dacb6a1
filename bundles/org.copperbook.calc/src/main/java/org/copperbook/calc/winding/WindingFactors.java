package org.copperbook.calc.winding;

import java.util.List;
import org.copperbook.calc.Require;

/**
 * Winding factors of a coil list, as the vector sum over the coils that are really there: a coil of {@code w} turns
 * from slot g to slot r adds {@code w (e^(j n g) - e^(j n r))/2}, n being the electrical angle of a slot times the
 * order of the harmonic, and the factor is the length of the sum over the turns. (Vector sum of the star of slots: Say,
 * Alternating Current Machines; Pyrhonen, Jokinen and Hrabovcova, Design of Rotating Electrical Machines, ch. 2.)
 */
public final class WindingFactors {
    private final Winding winding;
    private final double[] cosine;
    private final double[] sine;

    /**
     * @param winding the coil list
     */
    public WindingFactors(Winding winding) {
        this.winding = winding;
        int slots = winding.slots();
        cosine = new double[slots];
        sine = new double[slots];
        for (int s = 0; s < slots; s++) {
            double angle = 2 * Math.PI * s / slots;
            cosine[s] = Math.cos(angle);
            sine[s] = Math.sin(angle);
        }
    }

    /**
     * Winding factor of one phase.
     *
     * @param phase phase from 1
     * @param order order of the harmonic over the working field, from 1
     * @return factor between 0 and 1
     */
    public double factor(int phase, int order) {
        return phasor(phase, order).magnitude();
    }

    /**
     * Winding factor of one phase as a phasor, whose angle is that of the phase's axis.
     *
     * @param phase phase from 1
     * @param order order of the harmonic over the working field, from 1
     * @return phasor of length 0 to 1
     */
    public Phasor phasor(int phase, int order) {
        Require.between("order of a harmonic", order, 1, 100_000, "orders are counted from the working field");
        return waveOf(winding.coils(), phase, order * winding.polePairs());
    }

    /**
     * Factor towards a field of any number of pole pairs, which covers the sub-harmonics of fractional windings.
     *
     * @param phase phase from 1
     * @param polePairs pole pairs of the field, from 1
     * @return phasor of length 0 to 1
     */
    public Phasor towardsField(int phase, int polePairs) {
        Require.between("pole pairs of the field", polePairs, 1, 1_000_000, "a field has at least one pair");
        return waveOf(winding.coils(), phase, polePairs);
    }

    /**
     * Electromotive force phasor of some coils, in turns (their vector sum, not divided by their number).
     *
     * @param coils coils of this winding
     * @return phasor for the working field
     */
    public Phasor sumOf(List<Coil> coils) {
        double re = 0;
        double im = 0;
        for (Coil coil : coils) {
            double weight = coil.sense() * coil.turns() / 2;
            int go = angle(coil.goSlot(), winding.polePairs());
            int back = angle(coil.returnSlot(), winding.polePairs());
            re += weight * (cosine[go] - cosine[back]);
            im += weight * (sine[go] - sine[back]);
        }
        return new Phasor(re, im);
    }

    /**
     * Factors of all phases for the working field and its harmonics.
     *
     * @param highestOrder highest order, from 1
     * @return factor by phase (index 0 is phase 1) and order (index 0 is order 1)
     */
    public double[][] table(int highestOrder) {
        Require.between("highest order", highestOrder, 1, 100_000, "orders are counted from the working field");
        double[][] re = new double[winding.phases()][highestOrder];
        double[][] im = new double[winding.phases()][highestOrder];
        double[] turns = new double[winding.phases()];
        int slots = winding.slots();
        for (Coil coil : winding.coils()) {
            int p = coil.phase() - 1;
            turns[p] += coil.turns();
            double weight = coil.sense() * coil.turns() / 2;
            int goStep = angle(coil.goSlot(), winding.polePairs());
            int backStep = angle(coil.returnSlot(), winding.polePairs());
            int go = 0;
            int back = 0;
            for (int i = 0; i < highestOrder; i++) {
                go += goStep;
                go = go >= slots ? go - slots : go;
                back += backStep;
                back = back >= slots ? back - slots : back;
                re[p][i] += weight * (cosine[go] - cosine[back]);
                im[p][i] += weight * (sine[go] - sine[back]);
            }
        }
        double[][] factors = new double[winding.phases()][highestOrder];
        for (int p = 0; p < winding.phases(); p++) {
            for (int i = 0; i < highestOrder && turns[p] > 0; i++) {
                factors[p][i] = Math.hypot(re[p][i], im[p][i]) / turns[p];
            }
        }
        return factors;
    }

    private Phasor waveOf(List<Coil> coils, int phase, int pairs) {
        Require.between("phase", phase, 1, winding.phases(), "the winding has no further phase");
        double re = 0;
        double im = 0;
        double turns = 0;
        for (Coil coil : coils) {
            if (coil.phase() == phase) {
                double weight = coil.sense() * coil.turns() / 2;
                int go = angle(coil.goSlot(), pairs);
                int back = angle(coil.returnSlot(), pairs);
                re += weight * (cosine[go] - cosine[back]);
                im += weight * (sine[go] - sine[back]);
                turns += coil.turns();
            }
        }
        Require.that(turns > 0, "phase", Integer.toString(phase), "the phases that have coils",
                "a factor needs a coil");
        return new Phasor(re / turns, im / turns);
    }

    /** Place on the circle in steps of one slot, reduced to one turn. */
    private int angle(int slot, int pairs) {
        return (int) ((long) (slot - 1) * pairs % winding.slots());
    }
}

package org.copperbook.calc.wire;

import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * Which sizes a measured diameter may be.
 *
 * @param measured diameter in m
 * @param grade what was measured: bare metal or an enamelled wire
 * @param candidates sizes nearest first
 */
public record WireGauging(double measured, InsulationGrade grade, List<Candidate> candidates) {
    public WireGauging {
        candidates = List.copyOf(candidates);
    }

    /**
     * A size that the reading may belong to.
     *
     * @param size the size
     * @param deviation reading less the middle of the size's diameter range, in m
     * @param fits whether the reading, within the uncertainty of the measurement, lies in the size's range
     */
    public record Candidate(WireSize size, double deviation, boolean fits) {
    }

    /**
     * Compares a reading with a list of sizes. The range of a bare size is its nominal diameter with the tolerance of
     * IEC 60317-0-1; that of an enamelled one reaches from the thinnest conductor with the least enamel to the largest
     * overall diameter.
     *
     * @param measured diameter read in m, 0.1 to 6 mm
     * @param grade bare or a grade of enamel
     * @param expanded expanded uncertainty of the reading in m, 0 or more (a micrometer: about 4 micrometres, common
     *     practice)
     * @param sizes sizes to compare with
     * @return all sizes, nearest first; sizes of two systems that fit are both shown
     */
    public static WireGauging of(double measured, InsulationGrade grade, double expanded, List<WireSize> sizes) {
        Require.between("measured wire diameter", measured * 1e3, 0.1, 6, "mm",
                "winding wire is tabulated in this range");
        Require.notNegative("expanded uncertainty of the diameter", expanded, "m");
        Require.that(!sizes.isEmpty(), "sizes to compare with", "none", "at least one", "nothing can be nearest");
        List<Candidate> candidates = sizes.stream().map(size -> candidate(measured, grade, expanded, size))
                .sorted(Comparator.comparing((Candidate c) -> !c.fits())
                .thenComparingDouble(c -> Math.abs(c.deviation()))).toList();
        return new WireGauging(measured, grade, candidates);
    }

    private static Candidate candidate(double measured, InsulationGrade grade, double expanded, WireSize size) {
        OverallDiameter range = size.overallDiameter(grade);
        boolean fits = measured >= range.minimum() - expanded && measured <= range.maximum() + expanded;
        return new Candidate(size, measured - range.middle(), fits);
    }

    /** @return the nearest size */
    public WireSize nearest() {
        return candidates.get(0).size();
    }

    /** @return sizes the reading is compatible with, nearest first; none when it lies between all */
    public List<WireSize> fitting() {
        return candidates.stream().filter(Candidate::fits).map(Candidate::size).toList();
    }

    /** @return whether the reading cannot decide between two sizes */
    public boolean ambiguous() {
        return fitting().size() > 1;
    }
}

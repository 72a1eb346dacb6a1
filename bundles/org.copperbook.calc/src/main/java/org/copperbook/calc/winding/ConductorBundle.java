package org.copperbook.calc.winding;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.Require;
import org.copperbook.calc.wire.Conductor;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.WireSize;

/**
 * Strands in hand: what is wound together as one conductor, mixed sizes allowed.
 *
 * @param strands sizes with their numbers, at least one
 * @param material of all strands
 */
public record ConductorBundle(List<Strands> strands, ConductorMaterial material) {
    public ConductorBundle {
        strands = List.copyOf(strands);
        Require.that(!strands.isEmpty(), "strands in hand", "none", "at least one", "a turn needs a conductor");
    }

    /**
     * Strands of one size.
     *
     * @param count number, 1 to 1000
     * @param conductor size
     */
    public record Strands(int count, Conductor conductor) {
        public Strands {
            Require.between("strands in hand", count, 1, 1000, "a bundle of one size");
        }
    }

    /**
     * A copper bundle of one size.
     *
     * @param count strands in hand
     * @param conductor size
     * @return the bundle
     */
    public static ConductorBundle copper(int count, Conductor conductor) {
        return new ConductorBundle(List.of(new Strands(count, conductor)), ConductorMaterial.COPPER);
    }

    /** @return number of strands of all sizes */
    public int count() {
        return strands.stream().mapToInt(Strands::count).sum();
    }

    /** @return metal cross-section of all strands in m2 */
    public double area() {
        return strands.stream().mapToDouble(s -> s.count() * s.conductor().area()).sum();
    }

    /** @return resistance of the bundle in ohm/m at 20 C */
    public double ohmsPerMetre() {
        return material.resistivityAt20() / area();
    }

    /** @return bare mass of the bundle in kg/m */
    public double kilogramsPerMetre() {
        return material.density() * area();
    }

    /**
     * Sum over the strands of the squared overall diameter, which the square-cell fill grows with. A strip counts as
     * the square of equal area times 4 over pi, as a round wire of its area would.
     *
     * @param grade enamel of the round strands
     * @return m2
     */
    public double squareSum(InsulationGrade grade) {
        double sum = 0;
        for (Strands some : strands) {
            double side = some.conductor() instanceof WireSize size && grade != InsulationGrade.BARE
                    ? size.overallDiameter(grade).maximum() : Math.sqrt(some.conductor().area() * 4 / Math.PI);
            sum += some.count() * side * side;
        }
        return sum;
    }

    /** @return what a winder writes on the card */
    public String label() {
        return strands.stream().map(s -> s.count() + " x " + s.conductor().label()).collect(Collectors.joining(" + "));
    }
}

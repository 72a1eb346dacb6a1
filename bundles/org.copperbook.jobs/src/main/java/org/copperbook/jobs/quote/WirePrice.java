package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.InsulatedWire;

/**
 * What the shelf says that a kilogram of a wire costs.
 *
 * @param perKilogram in the shop's currency
 * @param grade       grade of enamel of the wire on the shelf; null when it is not said there
 * @param fit         how that goes with the grade that was asked for
 */
public record WirePrice(BigDecimal perKilogram, Integer grade, Fit fit) {

    /** How wire on the shelf goes with the grade that was asked for, the best first. */
    public enum Fit {
        /** It is of that grade, or none was asked for. */
        RIGHT,
        /** The shelf does not say its grade. */
        NOT_SAID,
        /** It is of another grade. */
        OTHER
    }

    /** Whether it may stand in a quote: wire of another grade is none that can be wound. */
    public boolean counts() {
        return fit != Fit.OTHER;
    }

    /**
     * The price of the best fitting wire of a size. Sizes are compared by what they measure, so that 1.25 mm finds 1.250 mm. Of
     * several that fit alike the dearest counts, so that no quote is too low by it.
     *
     * @param grades grades that will do; empty when any will
     * @return nothing when the shelf has no wire of the size with a price
     */
    static Optional<WirePrice> find(Collection<WireStock.Spool> shelf, String size, Set<Integer> grades) {
        return shelf.stream().filter(s -> s.pricePerKg() != null && InsulatedWire.isSame(size, s.size()))
                .map(s -> new WirePrice(s.pricePerKg(), s.grade(), fit(s.grade(), grades)))
                .min(Comparator.comparing((WirePrice w) -> w.fit()).thenComparing(WirePrice::perKilogram, Comparator.reverseOrder()));
    }

    private static Fit fit(Integer grade, Set<Integer> grades) {
        return !WireGrades.fits(grade, grades) ? Fit.OTHER : grades.isEmpty() || grade != null ? Fit.RIGHT : Fit.NOT_SAID;
    }
}

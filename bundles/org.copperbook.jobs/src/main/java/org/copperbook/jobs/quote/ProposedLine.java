package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.util.Set;
import org.copperbook.jobs.winding.WindingRole;

/**
 * A line that the job's record proposes for a quote, still without words.
 *
 * @param work     what it is for
 * @param winding  winding concerned, or null
 * @param about    size of wire, bearing or trade; null where there is none
 * @param grades   grades of enamel that the winding names for its wire; empty where it names none
 * @param quantity how much; null where the record does not say
 * @param price    price per unit in the shop's currency; null where the shop has none
 * @param lacking  what keeps the quantity from being known; null when it is known
 */
public record ProposedLine(Work work, WindingRole winding, String about, Set<Integer> grades, BigDecimal quantity,
        BigDecimal price, Lacking lacking) {

    ProposedLine(Work work, WindingRole winding, String about, BigDecimal quantity, BigDecimal price, Lacking lacking) {
        this(work, winding, about, Set.of(), quantity, price, lacking);
    }

    /** What lines are proposed for. */
    public enum Work {
        WIRE(QuoteLine.Kind.MATERIAL, "kg"), LABOUR(QuoteLine.Kind.LABOUR, "h"), DIODE_SET(QuoteLine.Kind.DIODE_SET, "set"),
        BEARING_DE(QuoteLine.Kind.BEARING, "pc"), BEARING_NDE(QuoteLine.Kind.BEARING, "pc"),
        BALANCING(QuoteLine.Kind.OUTSIDE_WORK, "job");

        private final QuoteLine.Kind kind;
        private final String unit;

        Work(QuoteLine.Kind kind, String unit) {
            this.kind = kind;
            this.unit = unit;
        }

        /** Kind of its line. */
        public QuoteLine.Kind kind() {
            return kind;
        }

        /** What its quantity counts. */
        public String unit() {
            return unit;
        }
    }

    /** What can be missing in a record. */
    public enum Lacking { WIRE, TURNS, MEAN_TURN, SIZE, HOURS }
}

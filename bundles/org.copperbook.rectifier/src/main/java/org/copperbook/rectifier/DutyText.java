package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.node.DoubleNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.RectifierDemand;

/** What the machine asks of its diodes, in a line each; open figures say what is missing. */
final class DutyText {

    private static final MathContext DIGITS = new MathContext(4);

    private DutyText() {
    }

    static String peak(Optional<RectifierDemand> demand, Words words) {
        return line(demand, demand.flatMap(RectifierDemand::peakReverseV), demand.flatMap(RectifierDemand::leastPeakV),
                FieldUnit.VOLT, "duty.peakText", words);
    }

    static String mean(Optional<RectifierDemand> demand, Words words) {
        return line(demand, demand.flatMap(RectifierDemand::meanA), demand.flatMap(RectifierDemand::leastMeanA),
                FieldUnit.AMPERE, "duty.meanText", words);
    }

    private static String line(Optional<RectifierDemand> demand, Optional<Double> working, Optional<Double> least,
            FieldUnit unit, String key, Words words) {
        if (working.isEmpty()) {
            return words.text("duty.open", demand.map(d -> String.join(" ", d.missing())).orElse(""));
        }
        return words.text(key, show(working.get(), unit), least.map(l -> show(l, unit))
                .orElse(words.text("duty.noMargin")));
    }

    private static String show(double value, FieldUnit unit) {
        return new NumberEntry(unit).show(DoubleNode.valueOf(new BigDecimal(value).round(DIGITS).doubleValue()));
    }
}

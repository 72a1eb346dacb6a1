package org.copperbook.calc.catalogue;

import static org.copperbook.calc.quantity.Dimension.RATIO;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.UnitTable;

/** Conversion between units of one quantity. */
public final class UnitCalculations implements CalculationSource {

    @Override
    public List<Calculation> calculations() {
        return List.of(Calculation.named("units", "convert")
                .title("A value in another unit")
                .source("NIST SP 811, appendix B; definitions of inch, pound and standard gravity")
                .formula("value x factor (+ offset for temperatures)")
                .text("value", "number and unit", null, "value with its unit")
                .text("to", "unit", null, "unit wanted")
                .choice("quantity", words(), "", "what is measured, when the unit alone leaves it open")
                .gives("result", RATIO, "", "number in the unit wanted")
                .by((in, out) -> out.put("result", convert(in))));
    }

    private static List<String> words() {
        return Arrays.stream(Dimension.values()).map(CalculationBuilder::word).toList();
    }

    private static double convert(Arguments in) {
        String to = in.text("to");
        for (Dimension d : Dimension.values()) {
            boolean asked = !in.has("quantity") || CalculationBuilder.word(d).equals(in.text("quantity"));
            if (asked && UnitTable.find(d, to).isPresent()
                    && QuantityText.parse(in.text("value"), d, d.unit(), DecimalMark.DOT) instanceof Parsed.Value v) {
                return UnitTable.unit(d, to).fromSi(v.quantity().si());
            }
        }
        throw new OutOfRange("value", in.text("value"), "values in units that " + to.toLowerCase(Locale.ROOT)
                + " can express", "the two units measure different things or are not known");
    }
}

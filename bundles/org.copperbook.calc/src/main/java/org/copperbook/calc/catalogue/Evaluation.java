package org.copperbook.calc.catalogue;

import java.util.List;
import java.util.Map;

import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.UnitTable;

/**
 * The results of one evaluation.
 *
 * @param calculation what was computed
 * @param values results by name in the order written; Double in SI, or String
 * @param warnings what the reader should know before relying on them
 */
public record Evaluation(Calculation calculation, Map<String, Object> values, List<String> warnings) {

    /** A number in SI. */
    public double number(String name) {
        return (Double) require(name);
    }

    /** A number in the unit in which the calculation shows it. */
    public double shownNumber(String name) {
        Output output = output(name);
        return UnitTable.unit(output.dimension(), output.unit()).fromSi(number(name));
    }

    /** A result that is a word. */
    public String word(String name) {
        return (String) require(name);
    }

    /** The result as text with its unit. */
    public String text(String name, int significant, DecimalMark mark) {
        Object value = require(name);
        if (value instanceof String s) {
            return s;
        }
        Output output = output(name);
        return QuantityText.formatIn(Quantity.of(output.dimension(), (Double) value), output.unit(), significant, mark);
    }

    private Output output(String name) {
        return calculation.output(name).orElseThrow(() -> new IllegalStateException(
                calculation.name() + " has no result " + name));
    }

    private Object require(String name) {
        Object value = values.get(name);
        if (value == null) {
            throw new IllegalStateException(calculation.name() + " gave no result " + name);
        }
        return value;
    }
}

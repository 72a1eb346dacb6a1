package org.copperbook.calc.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * A calculation under a name.
 *
 * @param area the part of the trade it belongs to, for grouping
 * @param name its name: small letters, digits and hyphens
 * @param title one line in the trade's words
 * @param inputs its inputs in order
 * @param outputs its results in order
 * @param source the standard or book it follows
 * @param formula the formula in writing
 * @param function the work
 */
public record Calculation(String area, String name, String title, List<Input> inputs, List<Output> outputs,
        String source, String formula, Formula function) {

    public Calculation {
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
    }

    /** Begins a calculation. */
    public static CalculationBuilder named(String area, String name) {
        return new CalculationBuilder(area, name);
    }

    /** The input of this name. */
    public Optional<Input> input(String key) {
        return inputs.stream().filter(i -> i.name().equals(key)).findFirst();
    }

    /** The result of this name. */
    public Optional<Output> output(String key) {
        return outputs.stream().filter(o -> o.name().equals(key)).findFirst();
    }
}

package org.copperbook.calc.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.copperbook.calc.catalogue.Evaluation;
import org.copperbook.calc.catalogue.Output;
import org.copperbook.calc.quantity.UnitTable;

/**
 * One result that a reference states: "name=number unit ~tolerance", or "name=word". Without a tolerance the number holds to
 * nine digits. The tolerance is absolute in the unit named.
 */
record Expectation(String output, String text, Double number, String unit, Double tolerance) {

    private static final Pattern NUMBER = Pattern.compile("(-?[0-9][0-9.]*(?:e-?[0-9]+)?)(?: ([^~ ][^~]*?))?(?: ?~([0-9.e-]+))?");

    static List<Expectation> list(String cell) {
        List<Expectation> all = new ArrayList<>();
        for (String part : cell.split("\\s*\\|\\s*")) {
            if (!part.isEmpty() && !part.startsWith("!")) {
                all.add(of(part));
            }
        }
        return all;
    }

    private static Expectation of(String part) {
        int eq = part.indexOf('=');
        String name = part.substring(0, eq);
        String value = part.substring(eq + 1);
        Matcher m = NUMBER.matcher(value);
        if (!m.matches()) {
            return new Expectation(name, value, null, null, null);
        }
        return new Expectation(name, value, Double.valueOf(m.group(1)), m.group(2),
                m.group(3) == null ? null : Double.valueOf(m.group(3)));
    }

    /** How the evaluation differs from what is stated, or null when it agrees. */
    String difference(Evaluation evaluation) {
        if (evaluation.values().get(output) instanceof String word) {
            return word.equalsIgnoreCase(text) ? null : output + " is " + word + ", not " + text;
        }
        if (number == null) {
            return output + " is " + evaluation.values().get(output) + ", not " + text;
        }
        double found = found(evaluation);
        double allowed = tolerance == null ? 1e-8 * Math.max(Math.abs(number), 1e-9) : tolerance;
        return Math.abs(found - number) <= allowed ? null
                : output + " is " + found + ", not " + text + " (allowed " + allowed + ")";
    }

    private double found(Evaluation evaluation) {
        Output o = evaluation.calculation().output(output).orElseThrow(() -> new AssertionError(
                evaluation.calculation().name() + " has no result " + output));
        String in = unit == null ? o.unit() : unit;
        return UnitTable.unit(o.dimension(), in).fromSi(evaluation.number(output));
    }
}

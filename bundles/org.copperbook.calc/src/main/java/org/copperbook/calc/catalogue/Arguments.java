package org.copperbook.calc.catalogue;

import java.util.Locale;
import java.util.Map;

/** The inputs of one evaluation, read and in SI. Asking for an input that was not given reports it as missing. */
public final class Arguments {

    private final Map<String, Object> values;

    Arguments(Map<String, Object> values) {
        this.values = values;
    }

    /** Whether an optional input was given. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** A number in SI; positive infinity for "above range". */
    public double number(String name) {
        return (Double) value(name);
    }

    /** A number in SI, or the fallback when the input was not given. */
    public double number(String name, double fallback) {
        return has(name) ? number(name) : fallback;
    }

    /** The first of several inputs that was given; refused when none was. */
    public String firstGiven(String... names) {
        for (String name : names) {
            if (has(name)) {
                return name;
            }
        }
        throw new InputProblem(InputProblem.Kind.MISSING, names[0], "one of these is needed: "
                + String.join(", ", names));
    }

    /** Several numbers in SI, in the order given. */
    public double[] numbers(String name) {
        return ((double[]) value(name)).clone();
    }

    /** Points as {x, y} in SI, in the order given. */
    public double[][] points(String name) {
        double[][] points = (double[][]) value(name);
        double[][] copy = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            copy[i] = points[i].clone();
        }
        return copy;
    }

    /** A whole number. */
    public int whole(String name) {
        return (Integer) value(name);
    }

    /** Whether a flag is yes. */
    public boolean flag(String name) {
        return (Boolean) value(name);
    }

    /** Text or the word of a choice. */
    public String text(String name) {
        return (String) value(name);
    }

    /** The constant of an enumeration that a choice names. */
    public <E extends Enum<E>> E choice(String name, Class<E> type) {
        return Enum.valueOf(type, text(name).toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private Object value(String name) {
        Object v = values.get(name);
        if (v == null) {
            throw new InputProblem(InputProblem.Kind.MISSING, name, name + " is needed beside the other inputs");
        }
        return v;
    }
}

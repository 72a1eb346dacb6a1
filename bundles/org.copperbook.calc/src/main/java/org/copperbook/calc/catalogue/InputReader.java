package org.copperbook.calc.catalogue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.QuantityText;

/** Turns texts into the arguments of a calculation. */
final class InputReader {

    private static final Set<String> OPEN = Set.of("ol", "above range", "open", "inf");

    private final DecimalMark mark;

    InputReader(DecimalMark mark) {
        this.mark = mark;
    }

    Arguments read(Calculation calculation, Map<String, String> texts) {
        for (String key : texts.keySet()) {
            if (calculation.input(key).isEmpty()) {
                throw new InputProblem(InputProblem.Kind.UNKNOWN_INPUT, key, calculation.name() + " has no input \""
                        + key + "\"; it takes " + names(calculation));
            }
        }
        Map<String, Object> values = new HashMap<>();
        for (Input input : calculation.inputs()) {
            String text = texts.get(input.name());
            if (text == null || text.isBlank()) {
                text = input.defaultText();
            }
            if (text != null) {
                values.put(input.name(), value(input, text.strip()));
            } else if (input.required()) {
                throw new InputProblem(InputProblem.Kind.MISSING, input.name(), calculation.name() + " needs "
                        + input.name() + " (" + input.doc() + ")");
            }
        }
        return new Arguments(values);
    }

    private static String names(Calculation calculation) {
        return calculation.inputs().stream().map(Input::name).collect(Collectors.joining(", "));
    }

    private Object value(Input input, String text) {
        InputType type = input.type();
        if (type instanceof InputType.Number n) {
            if (n.mayBeOpen() && OPEN.contains(text.toLowerCase(Locale.ROOT))) {
                return Double.POSITIVE_INFINITY;
            }
            return quantity(input, text, n.dimension(), n.unit());
        }
        if (type instanceof InputType.Numbers n) {
            String[] parts = parts(text);
            double[] values = new double[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = quantity(input, parts[i], n.dimension(), n.unit());
            }
            return values;
        }
        if (type instanceof InputType.Points p) {
            String[] parts = parts(text);
            double[][] values = new double[parts.length][];
            for (int i = 0; i < parts.length; i++) {
                values[i] = point(input, parts[i], p);
            }
            return values;
        }
        if (type instanceof InputType.Whole) {
            return whole(input, text);
        }
        if (type instanceof InputType.Flag) {
            return flag(input, text);
        }
        if (type instanceof InputType.Choice c) {
            return choice(input, text, c);
        }
        return text;
    }

    private static String[] parts(String text) {
        return text.split("\\s*[;\\n\\t]\\s*");
    }

    private double[] point(Input input, String text, InputType.Points p) {
        String[] xy = text.split(":");
        if (xy.length != 2) {
            throw unreadable(input, "\"" + text + "\" is not a point; write x:y; x:y");
        }
        return new double[] {quantity(input, xy[0].strip(), p.x(), p.xUnit()),
            quantity(input, xy[1].strip(), p.y(), p.yUnit())};
    }

    private double quantity(Input input, String text, Dimension dimension, String unit) {
        Parsed parsed = QuantityText.parse(text, dimension, unit, mark);
        if (parsed instanceof Parsed.Value v) {
            return v.quantity().si();
        }
        if (parsed instanceof Parsed.Ambiguous a) {
            throw new InputProblem(InputProblem.Kind.AMBIGUOUS, input.name(), input.name() + "=" + text + " can mean "
                    + a.readings().stream().map(Parsed.Value::normalised).collect(Collectors.joining(" or ")));
        }
        throw unreadable(input, ((Parsed.Wrong) parsed).explanation());
    }

    private static Integer whole(Input input, String text) {
        try {
            return Integer.valueOf(text.replace(" ", ""));
        } catch (NumberFormatException e) {
            throw unreadable(input, "\"" + text + "\" is not a whole number");
        }
    }

    private static Boolean flag(Input input, String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "1" -> true;
            case "no", "n", "false", "0" -> false;
            default -> throw unreadable(input, "\"" + text + "\" is neither yes nor no");
        };
    }

    private static String choice(Input input, String text, InputType.Choice c) {
        String word = text.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
        for (String option : c.options()) {
            if (option.equalsIgnoreCase(word)) {
                return option;
            }
        }
        throw unreadable(input, "\"" + text + "\" is none of " + String.join(", ", c.options()));
    }

    private static InputProblem unreadable(Input input, String why) {
        return new InputProblem(InputProblem.Kind.NOT_READABLE, input.name(), input.name() + ": " + why);
    }
}
